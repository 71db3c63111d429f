package io.loopstate.engine.fluid;

/** The datum of enthalpy and entropy, always saturated liquid. */
public enum ReferenceState {
    /** International Institute of Refrigeration: h = 200 kJ/kg, s = 1 kJ/(kg K) at 0 degC. */
    IIR("0 degC"),
    /** ASHRAE: h = 0, s = 0 at -40 degC. */
    ASHRAE("-40 degC"),
    /** h = 0, s = 0 at the normal boiling point (101.325 kPa). */
    NORMAL_BOILING_POINT("a normal boiling point");

    private final String words;

    ReferenceState(String words) {
        this.words = words;
    }

    /** Where the saturated liquid is, in words. */
    public String words() {
        return words;
    }
}
