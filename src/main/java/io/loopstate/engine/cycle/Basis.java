package io.loopstate.engine.cycle;

/** Where limits and formulas of this package come from, in the words shown to the user. */
final class Basis {
    static final String COMMON_PRACTICE = "common practice, no source";
    static final String DEFINITION = "definition";
    static final String FIRST_LAW = "first law of thermodynamics";
    static final String SECOND_LAW = "second law of thermodynamics";
    static final String READINGS = "comparison of the readings given";

    private Basis() {}
}
