package io.loopstate.engine.rejection;

/** How the air passes the zones of a condenser. */
public enum Arrangement {
    /** Side by side: every zone meets entering air, and of the flow its share of the face. One row deep. */
    CROSS_FLOW,
    /** One behind the other: all air meets the subcooling zone first, then the condensing one, then the hot vapor. */
    SERIES
}
