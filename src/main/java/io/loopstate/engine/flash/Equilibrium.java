package io.loopstate.engine.flash;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;

/**
 * The states of one refrigerant, enthalpy and entropy counted from one reference state. Immutable and thread-safe.
 *
 * <p>Every method works in SI per kilogram and throws {@link io.loopstate.engine.error.EngineException} where there is no
 * answer inside the range of the equation of state; none extrapolates.
 */
public interface Equilibrium {
    Refrigerant refrigerant();

    /** The datum of enthalpy and entropy. */
    ReferenceState referenceState();

    /**
     * The state at which two variables have the values given.
     *
     * @param phase which state to take where several satisfy the inputs; empty to be told of them by an error
     */
    State state(Variable first, double firstValue, Variable second, double secondValue, Optional<Phase> phase);

    /** As above, where no choice of phase is needed. */
    default State state(Variable first, double firstValue, Variable second, double secondValue) {
        return state(first, firstValue, second, secondValue, Optional.empty());
    }

    /** Single-phase state at pressure (Pa) and temperature (K). */
    State atPressureTemperature(double pressure, double temperature);

    /** State at pressure (Pa) and specific enthalpy (J/kg). */
    State atPressureEnthalpy(double pressure, double specificEnthalpy);

    /** State at pressure (Pa) and specific entropy (J/(kg K)). */
    State atPressureEntropy(double pressure, double specificEntropy);

    /** Bubble and dew point at a temperature (K) from the triple point to below the critical point. */
    Saturation saturationAtTemperature(double temperature);

    /** Bubble and dew point at a pressure (Pa) from the triple point to below the critical point. */
    Saturation saturationAtPressure(double pressure);

    /**
     * Composition of the phase that is about to form at a saturation: mole fractions in the order of the components, empty
     * where it is that of the whole, as of a pure fluid.
     *
     * @param given {@code TEMPERATURE} or {@code PRESSURE} of the saturation
     * @param value K or Pa, as for the saturation
     * @param bubble of the first vapor at the bubble point, or of the first liquid at the dew point
     */
    default List<Double> incipientPhase(Variable given, double value, boolean bubble) {
        return List.of();
    }
}
