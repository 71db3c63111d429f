package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.numerics.Iteration;
import java.util.Optional;

/**
 * Newton's method for two conditions on temperature and density in one phase. It is fast and gives up rather than wander:
 * its callers then take a slower way that cannot fail.
 */
final class PlaneNewton {
    private static final int MAX_ITERATIONS = 12;
    private static final double CONVERGED = 1e-13;
    private static final double LARGEST_TEMPERATURE_STEP = 0.3;
    private static final double LARGEST_DENSITY_STEP = 0.6;

    private PlaneNewton() {}

    /** A condition f(T, rho) = 0 with its derivatives. */
    record Condition(double value, double byTemperature, double byDensity) {}

    /** Both conditions at a state. */
    interface Conditions {
        Condition first(MolarState state);

        Condition second(MolarState state);
    }

    /**
     * @param minDensity mol/m3; iterates are kept at or above it
     * @param maxDensity mol/m3; and at or below this
     * @param smallStep relative step that is surely inside the region where Newton squares the error
     * @return the state, unless the iteration did not settle
     */
    static Optional<MolarState> solve(
            FluidModel fluid,
            Conditions conditions,
            double startTemperature,
            double startDensity,
            double minDensity,
            double maxDensity,
            double smallStep) {
        double t = clamp(startTemperature, fluid.minTemperature(), fluid.maxTemperature());
        double rho = clamp(startDensity, minDensity, maxDensity);
        double previous = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            MolarState state = fluid.isotherm(t).state(rho);
            Condition a = conditions.first(state);
            Condition b = conditions.second(state);
            double determinant = a.byTemperature() * b.byDensity() - a.byDensity() * b.byTemperature();
            double dt = (a.byDensity() * b.value() - b.byDensity() * a.value()) / determinant;
            double dRho = (b.byTemperature() * a.value() - a.byTemperature() * b.value()) / determinant;
            double size = Math.max(Math.abs(dt) / t, Math.abs(dRho) / rho);
            if (!(size < Double.POSITIVE_INFINITY) || state.pressureByDensity() <= 0) {
                Iteration.STATE.gaveUp(k + 1);
                return Optional.empty();
            }
            double ratio = size / previous;
            // the error after this step: Newton squares it
            if (size * Math.min(1, ratio * ratio) <= CONVERGED && size < smallStep && inside(fluid, t + dt)) {
                Iteration.STATE.converged(k + 1);
                return Optional.of(fluid.isotherm(t + dt).state(rho + dRho));
            }
            previous = size;
            t = clamp(
                    t + clamp(dt, -LARGEST_TEMPERATURE_STEP * t, LARGEST_TEMPERATURE_STEP * t),
                    fluid.minTemperature(),
                    fluid.maxTemperature());
            rho = clamp(
                    rho + clamp(dRho, -LARGEST_DENSITY_STEP * rho, LARGEST_DENSITY_STEP * rho), minDensity, maxDensity);
        }
        Iteration.STATE.gaveUp(MAX_ITERATIONS);
        return Optional.empty();
    }

    private static boolean inside(FluidModel fluid, double t) {
        return t >= fluid.minTemperature() * (1 - 1e-9) && t <= fluid.maxTemperature() * (1 + 1e-9);
    }

    private static double clamp(double x, double lower, double upper) {
        return Math.min(Math.max(x, lower), upper);
    }
}
