package io.loopstate.engine.flash;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.property.State;
import java.util.List;

/** The properties by which a state can be asked for. */
final class StateInputs {
    static final List<Variable> VARIABLES = List.of(
            Variable.TEMPERATURE,
            Variable.PRESSURE,
            Variable.DENSITY,
            Variable.SPECIFIC_ENTHALPY,
            Variable.SPECIFIC_ENTROPY,
            Variable.SPECIFIC_INTERNAL_ENERGY,
            Variable.VAPOR_QUALITY);

    private StateInputs() {}

    /** What a state has for a variable. */
    static double value(State state, Variable variable) {
        return switch (variable) {
            case TEMPERATURE -> state.temperature();
            case PRESSURE -> state.pressure();
            case DENSITY -> state.density();
            case SPECIFIC_ENTHALPY -> state.specificEnthalpy();
            case SPECIFIC_ENTROPY -> state.specificEntropy();
            case SPECIFIC_INTERNAL_ENERGY -> state.specificInternalEnergy();
            case VAPOR_QUALITY -> state.vaporQuality();
            default -> throw new IllegalArgumentException(variable.name());
        };
    }

    /** Whether two variables fix a state: on and inside a dome temperature and pressure do not, outside quality does not exist. */
    static boolean fixed(State state, Variable a, Variable b) {
        boolean onLine = state.saturated() && a == Variable.TEMPERATURE && b == Variable.PRESSURE;
        return !onLine && (state.saturated() || b != Variable.VAPOR_QUALITY);
    }

    /** Enthalpy with internal energy, which costs a hundred times what the others do, of blends a thousand times. */
    static boolean dear(Variable a, Variable b) {
        return a == Variable.SPECIFIC_ENTHALPY && b == Variable.SPECIFIC_INTERNAL_ENERGY;
    }
}
