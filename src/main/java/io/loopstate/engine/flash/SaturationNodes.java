package io.loopstate.engine.flash;

import io.loopstate.engine.fluid.Fluid;
import java.util.HashMap;
import java.util.Map;

/** Converged saturation states of a pure fluid at the nodes that {@link SaturationCurve} asks for. */
final class SaturationNodes {
    /** Below this x the auxiliary densities are too coarse to start from. */
    private static final double SCALED_GUESS_BELOW = 0.2;

    private final Fluid fluid;
    private final double criticalTemperature;
    private final double criticalDensity;
    private final Map<Double, SaturationSolver.Solution> solved = new HashMap<>();
    private final double liquidSlope;
    private final double vaporSlope;

    SaturationNodes(Fluid fluid) {
        this.fluid = fluid;
        criticalTemperature = fluid.criticalPoint().temperature();
        criticalDensity = fluid.criticalMolarDensity();
        double edge =
                Math.min(SCALED_GUESS_BELOW, Math.sqrt(1 - fluid.minSaturationTemperature() / criticalTemperature));
        double t = criticalTemperature * (1 - edge * edge);
        SaturationSolver.Solution start = SaturationSolver.solve(
                fluid.model(),
                t,
                fluid.auxiliaries().liquidDensity().at(t),
                fluid.auxiliaries().vaporDensity().at(t));
        liquidSlope = Math.log(start.liquidDensity() / criticalDensity) / edge;
        vaporSlope = Math.log(criticalDensity / start.vaporDensity()) / edge;
    }

    /** ln(rho/rhoc)/x; x negative for the vapor. */
    double density(double x) {
        SaturationSolver.Solution s = at(Math.abs(x));
        return Math.log((x > 0 ? s.liquidDensity() : s.vaporDensity()) / criticalDensity) / x;
    }

    /** ln(pc/p)/x^2. */
    double pressure(double x) {
        return Math.log(fluid.criticalPoint().pressure() / at(Math.abs(x)).pressure()) / (x * x);
    }

    private SaturationSolver.Solution at(double x) {
        return solved.computeIfAbsent(x, this::solve);
    }

    private SaturationSolver.Solution solve(double x) {
        double t = criticalTemperature * (1 - x * x);
        if (x > SCALED_GUESS_BELOW) {
            return SaturationSolver.solve(
                    fluid.model(),
                    t,
                    fluid.auxiliaries().liquidDensity().at(t),
                    fluid.auxiliaries().vaporDensity().at(t));
        }
        // ln(rho/rhoc)/x is nearly linear in signed x; non-analytic terms only make the guess coarser
        double mean = 0.5 * (liquidSlope + vaporSlope);
        double skew = 0.5 * (liquidSlope - vaporSlope) * x / SCALED_GUESS_BELOW;
        return SaturationSolver.solve(
                fluid.model(),
                t,
                criticalDensity * Math.exp(x * (mean + skew)),
                criticalDensity * Math.exp(-x * (mean - skew)));
    }
}
