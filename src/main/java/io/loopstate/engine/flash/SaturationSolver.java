package io.loopstate.engine.flash;

import io.loopstate.engine.eos.Derivatives;
import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Iteration;

/**
 * Phase equilibrium of a pure fluid at a temperature by Newton's method in both densities: Akasaka (2008), J. Thermal Sci.
 * Tech. 3, 442-451, eqs. 10-15.
 */
final class SaturationSolver {
    private static final int MAX_ITERATIONS = 60;
    private static final double LARGEST_STEP = 0.25;
    private static final double OUTWARD = 0.1;
    /** The iteration is quadratic: after a step this small (share of the width of the dome) the next one is the last. */
    private static final double LAST_BUT_ONE = 1e-9;
    /** Near the critical point rounding ends the descent of the steps before that. */
    private static final double STAGNANT = 1e-3;

    private SaturationSolver() {}

    /** Coexisting densities, mol/m3, and their pressure, Pa. */
    record Solution(double pressure, double liquidDensity, double vaporDensity) {}

    static Solution solve(HelmholtzModel model, double temperature, double liquidGuess, double vaporGuess) {
        Isotherm isotherm = model.isotherm(temperature);
        double liquid = liquidGuess;
        double vapor = vaporGuess;
        boolean last = false;
        double previous = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            Derivatives l = isotherm.residual(liquid);
            Derivatives v = isotherm.residual(vapor);
            // with J = rho (1 + d) and K = d + alphar + ln rho, equal at equilibrium; dK = dJ / rho
            double slopeLiquid = 1 + 2 * l.d() + l.dd();
            double slopeVapor = 1 + 2 * v.d() + v.dd();
            if (slopeLiquid <= 0 || slopeVapor <= 0) {
                // inside the spinodal, from where Newton would run to the trivial solution
                double outward = OUTWARD * (liquid - vapor);
                liquid += slopeLiquid <= 0 ? outward : 0;
                vapor = slopeVapor <= 0 ? Math.max(vapor - outward, 0.5 * vapor) : vapor;
                last = false;
                continue;
            }
            double differenceJ = vapor * (1 + v.d()) - liquid * (1 + l.d());
            double differenceK = v.d() - l.d() + v.value() - l.value() + Math.log(vapor / liquid);
            double stepJ = (differenceK - differenceJ / vapor) / (1 / liquid - 1 / vapor);
            double stepLiquid = stepJ / slopeLiquid;
            double stepVapor = (stepJ - differenceJ) / slopeVapor;
            double width = (liquid - vapor) / liquid;
            double size = Math.max(Math.abs(stepLiquid / liquid), Math.abs(stepVapor / vapor));
            double damping = Math.min(1, LARGEST_STEP * width / size);
            liquid += damping * stepLiquid;
            vapor += damping * stepVapor;
            if (last) {
                Iteration.SATURATION.converged(k + 1);
                double d = isotherm.residual(vapor).d();
                return new Solution(vapor * model.gasConstant() * temperature * (1 + d), liquid, vapor);
            }
            last = size < LAST_BUT_ONE * width || size > 0.5 * previous && size < STAGNANT * width;
            previous = size;
        }
        Iteration.SATURATION.gaveUp(MAX_ITERATIONS);
        throw EngineException.of(ErrorCode.NOT_CONVERGED, "saturation iteration at " + temperature + " K");
    }
}
