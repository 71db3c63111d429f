package io.loopstate.engine.component;

/** Which temperature of a boiling or condensing refrigerant is meant; one and the same for a pure fluid. */
public enum SaturationBasis {
    /** The last drop evaporates or the first condenses: the usual meaning in compressor ratings. */
    DEW,
    /** Half way between bubble and dew temperature at one pressure. */
    MIDPOINT,
    /** The first bubble appears. */
    BUBBLE
}
