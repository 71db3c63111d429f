package io.loopstate.engine.component;

/** Which temperature of a boiling or condensing refrigerant is meant; one and the same for a pure fluid. */
public enum SaturationBasis {
    /** The last drop evaporates or the first condenses: the usual meaning in compressor ratings. */
    DEW,
    /** Half way between bubble and dew temperature at one pressure. */
    MIDPOINT,
    /** The first bubble appears. */
    BUBBLE,
    /**
     * Half way between the temperature at the inlet of the evaporator, where some has evaporated already, and the dew
     * temperature; of an evaporating level only.
     */
    INLET_TO_DEW
}
