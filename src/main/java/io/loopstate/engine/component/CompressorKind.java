package io.loopstate.engine.component;

/** Where the motor of a compressor gives off its heat. */
public enum CompressorKind {
    /** Motor cooled by the refrigerant (hermetic and semi-hermetic): its loss ends up in the refrigerant. */
    HERMETIC,
    /** Motor outside: the refrigerant takes the shaft power only. */
    OPEN
}
