package io.loopstate.engine.coexistence;

/** What can be given of a mixture of phases; molar and SI. */
public enum SplitVariable {
    /** K. */
    TEMPERATURE,
    /** Pa. */
    PRESSURE,
    /** m3/mol. */
    VOLUME,
    /** J/mol. */
    ENTHALPY,
    /** J/(mol K). */
    ENTROPY,
    /** J/mol. */
    INTERNAL_ENERGY,
    /** Moles of vapor per mole. */
    VAPOR_FRACTION,
    /** Mass of vapor per mass. */
    QUALITY
}
