package io.loopstate.engine.compression;

/** How motor and compressor are put together. */
public enum Housing {
    /** One welded shell: the motor's heat stays inside. */
    HERMETIC,
    /** Bolted together: the motor is cooled by the suction vapor, or from outside. */
    SEMI_HERMETIC,
    /** Motor outside, with a shaft seal and a coupling or belt between. */
    OPEN
}
