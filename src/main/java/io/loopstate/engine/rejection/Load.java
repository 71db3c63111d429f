package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;

/**
 * What a coil has to do.
 *
 * @param heatGiven whether the value is heat, W, or the flow of refrigerant, kg/s
 * @param value of the one or the other
 */
public record Load(boolean heatGiven, double value) {
    public Load {
        Require.positive(heatGiven ? "heat" : "massFlow", value);
    }

    /** Refrigerant flow, kg/s. */
    public static Load massFlow(double kilogramsPerSecond) {
        return new Load(false, kilogramsPerSecond);
    }

    /** Heat, W. */
    public static Load heat(double watt) {
        return new Load(true, watt);
    }

    /** The refrigerant flow, kg/s, whose enthalpy changes by so much (J/kg). */
    double flow(double enthalpyChange) {
        return heatGiven ? value / enthalpyChange : value;
    }
}
