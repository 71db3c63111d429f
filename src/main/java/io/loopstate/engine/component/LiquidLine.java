package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;

/** How far liquid stays from boiling on its way to the valve. */
public final class LiquidLine {
    /** Standard acceleration of free fall, m/s2. Source: 3rd General Conference on Weights and Measures, 1901. */
    public static final double STANDARD_GRAVITY = 9.80665;

    private LiquidLine() {}

    /**
     * Margin to flash gas at the valve.
     *
     * @param valvePressure Pa left at the valve
     * @param bubbleTemperature K at that pressure
     * @param margin K between the liquid's temperature and the bubble point; 0 or less means vapor before the valve
     */
    public record FlashMargin(double valvePressure, double bubbleTemperature, double margin) {}

    /**
     * The margin at constant temperature: p = p_liquid - rho g z - dp, margin = Tbubble(p) - T.
     *
     * @param liquid where the liquid line pressure is known
     * @param lift m from there up to the valve, negative if down
     * @param loss Pa of friction
     * @throws EngineException {@code CONTRADICTORY_INPUTS} if lift and friction take more than the whole pressure
     */
    public static FlashMargin flashMargin(Equilibrium equilibrium, State liquid, double lift, double loss) {
        double pressure = liquid.pressure() - liquid.density() * STANDARD_GRAVITY * lift - loss;
        if (!(pressure > 0)) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "Lift and friction of the liquid line take more than the whole pressure.",
                            Variable.PRESSURE,
                            pressure,
                            0,
                            liquid.pressure())
                    .about("liquidLift");
        }
        double bubble = equilibrium.saturationAtPressure(pressure).bubble().temperature();
        return new FlashMargin(pressure, bubble, bubble - liquid.temperature());
    }

    /**
     * Height (m) to which liquid can be lifted without friction before it boils.
     *
     * @param liquid subcooled liquid
     */
    public static double permissibleLift(Equilibrium equilibrium, State liquid) {
        double boiling = equilibrium
                .saturationAtTemperature(liquid.temperature())
                .bubble()
                .pressure();
        return column(liquid.pressure() - boiling, liquid.density());
    }

    /** Height (m) of a column of a density (kg/m3) that weighs a pressure (Pa). */
    static double column(double pressure, double density) {
        return pressure / (density * STANDARD_GRAVITY);
    }
}
