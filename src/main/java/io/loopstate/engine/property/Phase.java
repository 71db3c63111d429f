package io.loopstate.engine.property;

/**
 * Phase of a state. Above the critical temperature a state is supercritical above the critical pressure and vapor below
 * it; below the critical temperature a state above the critical pressure is liquid.
 */
public enum Phase {
    LIQUID,
    TWO_PHASE,
    VAPOR,
    SUPERCRITICAL
}
