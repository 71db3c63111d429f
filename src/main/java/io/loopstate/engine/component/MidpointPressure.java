package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;

/**
 * The pressure at which the mean of bubble and dew temperature has a given value.
 *
 * <p>It lies between the dew and the bubble pressure of that temperature: at the former the dew temperature equals it and
 * the mean lies below, at the latter the bubble temperature does and the mean lies above. The root is found there by false
 * position with halving of the stale end (Illinois), over the logarithm of the pressure, in which temperature is nearly
 * straight.
 */
final class MidpointPressure {
    private static final int MAX_ITERATIONS = 60;
    /** Temperature residual that ends the iteration, relative. */
    private static final double TOLERANCE = 1e-12;
    /** Difference of both pressures, relative, below which the fluid has no glide. */
    private static final double NO_GLIDE = 1e-9;

    private MidpointPressure() {}

    static double at(Equilibrium equilibrium, double temperature, Saturation saturation) {
        double low = Math.log(saturation.dew().pressure());
        double high = Math.log(saturation.bubble().pressure());
        if (high - low < NO_GLIDE) {
            return saturation.dew().pressure();
        }
        double lowResidual = residual(equilibrium, low, temperature);
        double highResidual = residual(equilibrium, high, temperature);
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            double middle = (low * highResidual - high * lowResidual) / (highResidual - lowResidual);
            double middleResidual = residual(equilibrium, middle, temperature);
            if (Math.abs(middleResidual) <= TOLERANCE * temperature) {
                return Math.exp(middle);
            }
            if (middleResidual > 0) {
                high = middle;
                highResidual = middleResidual;
                lowResidual /= 2;
            } else {
                low = middle;
                lowResidual = middleResidual;
                highResidual /= 2;
            }
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, "The midpoint pressure did not converge.");
    }

    private static double residual(Equilibrium equilibrium, double logPressure, double temperature) {
        Saturation saturation = equilibrium.saturationAtPressure(Math.exp(logPressure));
        return (saturation.bubble().temperature() + saturation.dew().temperature()) / 2 - temperature;
    }
}
