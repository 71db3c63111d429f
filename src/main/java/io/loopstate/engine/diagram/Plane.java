package io.loopstate.engine.diagram;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.property.State;

/** The plane of a diagram. */
public enum Plane {
    /** Specific enthalpy (J/kg) across, the logarithm of absolute pressure (Pa) up. */
    PRESSURE_ENTHALPY(Variable.SPECIFIC_ENTHALPY, Variable.PRESSURE),
    /** Specific entropy (J/(kg K)) across, temperature (K) up. */
    TEMPERATURE_ENTROPY(Variable.SPECIFIC_ENTROPY, Variable.TEMPERATURE);

    private final Variable across;
    private final Variable up;

    Plane(Variable across, Variable up) {
        this.across = across;
        this.up = up;
    }

    /** The property that is drawn across. */
    public Variable across() {
        return across;
    }

    /** The property that is drawn up. */
    public Variable up() {
        return up;
    }

    /** The number across, SI. */
    public double x(State state) {
        return this == PRESSURE_ENTHALPY ? state.specificEnthalpy() : state.specificEntropy();
    }

    /** The number up, SI: Pa or K. */
    public double y(State state) {
        return this == PRESSURE_ENTHALPY ? state.pressure() : state.temperature();
    }

    /** The length that is drawn for a number up. */
    double drawn(double y) {
        return this == PRESSURE_ENTHALPY ? Math.log(y) : y;
    }
}
