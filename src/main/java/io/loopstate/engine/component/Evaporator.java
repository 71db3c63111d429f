package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;

/** Where the refrigerant takes up heat at low pressure. */
public final class Evaporator {
    private Evaporator() {}

    /**
     * The state at the outlet.
     *
     * @param pressure Pa at the outlet
     * @param condition superheat, temperature not below the dew point, or vapor quality
     * @throws EngineException {@code CONTRADICTORY_INPUTS} for a temperature below the dew point
     */
    public static State outlet(Equilibrium equilibrium, double pressure, OutletCondition condition) {
        return switch (condition.given()) {
            case SUPERHEAT ->
                vapor(
                        equilibrium,
                        pressure,
                        equilibrium.saturationAtPressure(pressure).dew(),
                        condition.value());
            case TEMPERATURE -> atTemperature(equilibrium, pressure, condition.value());
            case VAPOR_QUALITY ->
                equilibrium.state(Variable.PRESSURE, pressure, Variable.VAPOR_QUALITY, condition.value());
            default -> throw new IllegalArgumentException(condition.given() + " does not describe vapor");
        };
    }

    private static State atTemperature(Equilibrium equilibrium, double pressure, double temperature) {
        State dew = equilibrium.saturationAtPressure(pressure).dew();
        double superheat = temperature - dew.temperature();
        if (superheat < -SaturationMargin.SATURATED) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The vapor cannot leave colder than it evaporates: below the dew point it still holds liquid.",
                    Variable.TEMPERATURE,
                    temperature,
                    dew.temperature(),
                    Double.NaN);
        }
        return superheat <= SaturationMargin.SATURATED ? dew : vapor(equilibrium, pressure, dew, superheat);
    }

    private static State vapor(Equilibrium equilibrium, double pressure, State dew, double superheat) {
        return superheat == 0 ? dew : equilibrium.atPressureTemperature(pressure, dew.temperature() + superheat);
    }
}
