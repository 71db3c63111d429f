package io.loopstate.engine.cycle;

/** Where limits and formulas of this package come from, in the words shown to the user. */
public final class Basis {
    /** A rule of the trade. */
    public static final String COMMON_PRACTICE = "common practice, no source";
    /** True by definition. */
    public static final String DEFINITION = "definition";
    /** Energy is conserved. */
    public static final String FIRST_LAW = "first law of thermodynamics";
    /** Heat flows downhill. */
    public static final String SECOND_LAW = "second law of thermodynamics";
    /** Readings against each other. */
    public static final String READINGS = "comparison of the readings given";

    private Basis() {}
}
