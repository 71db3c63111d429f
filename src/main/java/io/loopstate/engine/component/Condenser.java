package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;
import java.util.Optional;

/** Where the refrigerant gives off heat at high pressure; above the critical pressure a gas cooler. */
public final class Condenser {
    private Condenser() {}

    /**
     * The state at the outlet.
     *
     * @param pressure Pa at the outlet
     * @param condition subcooling, temperature not above the bubble point, or vapor quality; above the critical pressure
     *     temperature only
     * @throws EngineException {@code CONTRADICTORY_INPUTS} for a temperature above the bubble point, and for anything but a
     *     temperature above the critical pressure
     */
    public static State outlet(Equilibrium equilibrium, double pressure, OutletCondition condition) {
        if (supercritical(equilibrium, pressure)) {
            return gasCoolerOutlet(equilibrium, pressure, condition);
        }
        return switch (condition.given()) {
            case SUBCOOLING ->
                liquid(
                        equilibrium,
                        pressure,
                        equilibrium.saturationAtPressure(pressure).bubble(),
                        condition.value());
            case TEMPERATURE -> atTemperature(equilibrium, pressure, condition.value());
            case VAPOR_QUALITY ->
                equilibrium.state(Variable.PRESSURE, pressure, Variable.VAPOR_QUALITY, condition.value());
            default -> throw new IllegalArgumentException(condition.given() + " does not describe liquid");
        };
    }

    /**
     * The heat given off from inlet to outlet, by what the refrigerant does. With a pressure drop the dew point is that at
     * the inlet's pressure and the bubble point that at the outlet's. If the inlet lies above the critical pressure, all
     * of it is gas cooling.
     */
    public static HeatRejection heatRejection(Equilibrium equilibrium, State inlet, State outlet) {
        double from = inlet.specificEnthalpy();
        double to = outlet.specificEnthalpy();
        Optional<Saturation> atInlet = SaturationMargin.saturation(equilibrium, inlet.pressure());
        if (atInlet.isEmpty()) {
            return new HeatRejection(0, 0, 0, from - to);
        }
        double dew = atInlet.get().dew().specificEnthalpy();
        Saturation atOutlet = inlet.pressure() == outlet.pressure()
                ? atInlet.get()
                : equilibrium.saturationAtPressure(outlet.pressure());
        double bubble = atOutlet.bubble().specificEnthalpy();
        double condensingFrom = Math.min(from, dew);
        double condensingTo = Math.min(condensingFrom, Math.max(to, bubble));
        return new HeatRejection(from - condensingFrom, condensingFrom - condensingTo, condensingTo - to, 0);
    }

    /** Whether nothing condenses at a pressure (Pa). */
    public static boolean supercritical(Equilibrium equilibrium, double pressure) {
        return pressure >= equilibrium.refrigerant().criticalPoint().pressure();
    }

    private static State gasCoolerOutlet(Equilibrium equilibrium, double pressure, OutletCondition condition) {
        if (condition.given() != Variable.TEMPERATURE) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "Above the critical pressure nothing condenses, so there is no subcooling and no quality: give"
                                    + " the temperature at the outlet of the gas cooler.",
                            Variable.PRESSURE,
                            pressure,
                            Double.NaN,
                            equilibrium.refrigerant().criticalPoint().pressure())
                    .about("gasCoolerOutletTemperature");
        }
        return equilibrium.atPressureTemperature(pressure, condition.value());
    }

    private static State atTemperature(Equilibrium equilibrium, double pressure, double temperature) {
        State bubble = equilibrium.saturationAtPressure(pressure).bubble();
        double subcooling = bubble.temperature() - temperature;
        if (subcooling < -SaturationMargin.SATURATED) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The liquid cannot leave warmer than it condenses: above the bubble point it still holds vapor.",
                    Variable.TEMPERATURE,
                    temperature,
                    Double.NaN,
                    bubble.temperature());
        }
        return subcooling <= SaturationMargin.SATURATED ? bubble : liquid(equilibrium, pressure, bubble, subcooling);
    }

    private static State liquid(Equilibrium equilibrium, double pressure, State bubble, double subcooling) {
        return subcooling == 0
                ? bubble
                : equilibrium.atPressureTemperature(pressure, bubble.temperature() - subcooling);
    }
}
