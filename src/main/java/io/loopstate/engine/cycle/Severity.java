package io.loopstate.engine.cycle;

/** How much a finding matters. */
public enum Severity {
    /** Worth knowing. */
    NOTE,
    /** Outside good practice, or a reading to check again. */
    CAUTION,
    /** May damage the machine. */
    DANGER
}
