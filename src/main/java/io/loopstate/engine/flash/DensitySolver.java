package io.loopstate.engine.flash;

import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Iteration;

/**
 * Density at a temperature and a pressure: Halley's method inside a bracket on which pressure rises with density.
 *
 * <p>The third-order step makes three evaluations the usual cost. An iterate outside the bracket is replaced by bisection.
 */
final class DensitySolver {
    private static final int MAX_ITERATIONS = 100;
    private static final double CONVERGED = 1e-15;
    /** A Newton step this small is the last even where the curvature is not fully known. */
    private static final double SMALL_STEP = 1e-10;

    private DensitySolver() {}

    /**
     * @param pressure Pa
     * @param lower mol/m3, below the root
     * @param upper mol/m3, above the root
     * @param start mol/m3
     */
    static double solve(Isotherm isotherm, double pressure, double lower, double upper, double start) {
        double lo = lower;
        double hi = upper;
        double rho = start > lo && start < hi ? start : 0.5 * (lo + hi);
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            Isotherm.Pressure p = isotherm.pressure(rho);
            double f = p.value() - pressure;
            if (f == 0) {
                Iteration.DENSITY.converged(k + 1);
                return rho;
            }
            if (f < 0) {
                lo = rho;
            } else {
                hi = rho;
            }
            double newton = -f / p.slope();
            double bend = 0.5 * p.curvature() * newton / p.slope();
            // Halley; where the curvature is too strong for it, plain Newton
            double step = Math.abs(bend) < 0.5 ? newton / (1 + bend) : newton;
            double next = rho + step;
            if (p.slope() > 0 && Math.abs(step) <= SMALL_STEP * rho) {
                // also where rounding puts the root on the wrong side of the last iterate
                Iteration.DENSITY.converged(k + 1);
                return next;
            }
            if (!(p.slope() > 0 && next > lo && next < hi)) {
                next = 0.5 * (lo + hi);
            } else if (Math.abs(step) * bend * bend <= CONVERGED * next) {
                Iteration.DENSITY.converged(k + 1);
                return next;
            }
            if (hi - lo <= Math.ulp(hi)) {
                Iteration.DENSITY.converged(k + 1);
                return next;
            }
            rho = next;
        }
        Iteration.DENSITY.gaveUp(MAX_ITERATIONS);
        throw EngineException.of(
                ErrorCode.NOT_CONVERGED, "density iteration at " + isotherm.temperature() + " K, " + pressure + " Pa");
    }
}
