package io.loopstate.engine.component;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.numerics.Roots;

/**
 * The pressure at which the mean of bubble and dew temperature has a given value.
 *
 * <p>It lies between the dew and the bubble pressure of that temperature: at the former the dew temperature equals it and
 * the mean lies below, at the latter the bubble temperature does and the mean lies above. The root is sought over the
 * logarithm of the pressure, in which temperature is nearly straight.
 */
final class MidpointPressure {
    /** Last step of the iteration, relative to the logarithm of the pressure. */
    private static final double TOLERANCE = 1e-14;
    /** Difference of both pressures, relative, below which the fluid has no glide. */
    private static final double NO_GLIDE = 1e-9;

    private MidpointPressure() {}

    static double at(Equilibrium equilibrium, double temperature, Saturation saturation) {
        double low = Math.log(saturation.dew().pressure());
        double high = Math.log(saturation.bubble().pressure());
        if (high - low < NO_GLIDE) {
            return saturation.dew().pressure();
        }
        return Math.exp(Roots.brent(
                logPressure -> midpoint(equilibrium, Math.exp(logPressure)) - temperature,
                low,
                high,
                TOLERANCE,
                "midpoint pressure"));
    }

    private static double midpoint(Equilibrium equilibrium, double pressure) {
        Saturation saturation = equilibrium.saturationAtPressure(pressure);
        return (saturation.bubble().temperature() + saturation.dew().temperature()) / 2;
    }
}
