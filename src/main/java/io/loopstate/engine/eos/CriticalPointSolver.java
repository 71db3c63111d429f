package io.loopstate.engine.eos;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;

/** The point where dp/drho = d2p/drho2 = 0, from a starting value good to a percent or so. */
public final class CriticalPointSolver {
    private static final int MAX_ITERATIONS = 50;
    /** The next step would be a millionth of this one, below the last digit. */
    private static final double CONVERGED = 1e-10;

    /** Relative step of the temperature difference quotients; their error only slows the iteration. */
    private static final double STEP = 1e-7;

    private CriticalPointSolver() {}

    /**
     * Newton iteration in temperature (K) and density (mol/m3).
     *
     * @return the critical state; with non-analytic terms the reducing point, where those equations have it by design
     */
    public static MolarState refine(HelmholtzModel model, double temperature, double density) {
        if (model.nonAnalytic()) {
            return model.isotherm(model.reducingTemperature()).state(model.reducingDensity());
        }
        double t = temperature;
        double rho = density;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            double step = STEP * t;
            Isotherm.Pressure here = model.isotherm(t).pressure(rho);
            Isotherm.Pressure warmer = model.isotherm(t + step).pressure(rho);
            double slopeByT = (warmer.slope() - here.slope()) / step;
            double curvatureByT = (warmer.curvature() - here.curvature()) / step;
            double ahead = model.isotherm(t).pressure(rho * (1 + STEP)).curvature();
            double curvatureByRho = (ahead - here.curvature()) / (rho * STEP);
            double determinant = slopeByT * curvatureByRho - here.curvature() * curvatureByT;
            double dt = (here.slope() * curvatureByRho - here.curvature() * here.curvature()) / determinant;
            double dRho = (slopeByT * here.curvature() - curvatureByT * here.slope()) / determinant;
            t -= dt;
            rho -= dRho;
            if (Math.abs(dt) <= CONVERGED * t) {
                return model.isotherm(t).state(rho);
            }
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, "critical point iteration");
    }
}
