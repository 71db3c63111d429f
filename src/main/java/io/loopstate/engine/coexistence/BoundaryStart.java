package io.loopstate.engine.coexistence;

import io.loopstate.engine.coexistence.BoundarySolver.Condition;
import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.eos.MixturePhase;
import java.util.Optional;

/**
 * Bubble and dew points from nothing but the components' critical data: estimated vapor pressures, Raoult's law, then
 * Newton's method on the real equations.
 */
final class BoundaryStart {
    /** Denser than any liquid that boils, as a multiple of the reducing density. */
    private static final double DENSE = 3.2;

    private static final int DENSITY_STEPS = 60;
    private static final double DENSITY_GOOD = 1e-3;
    private static final int TEMPERATURE_STEPS = 60;

    private BoundaryStart() {}

    static Optional<BoundaryPoint> atTemperature(Feed feed, double temperature, boolean bubble) {
        return near(feed, Condition.TEMPERATURE, temperature, temperature, bubble);
    }

    static Optional<BoundaryPoint> atPressure(Feed feed, double pressure, boolean bubble) {
        double t = feed.merged().reducingTemperature();
        for (int k = 0; k < TEMPERATURE_STEPS; k++) {
            // ln p is nearly linear in 1/T
            double step = 1e-4;
            double f = Math.log(pressure(feed, t, bubble) / pressure);
            double slope = (Math.log(pressure(feed, t * (1 + step), bubble) / pressure) - f) / step;
            double change = Math.max(-0.3, Math.min(0.3, f / slope));
            t /= 1 + change;
            if (Math.abs(change) < DENSITY_GOOD) {
                break;
            }
        }
        return near(feed, Condition.PRESSURE, pressure, t, bubble);
    }

    /** Raoult's law. */
    private static double pressure(Feed feed, double t, boolean bubble) {
        double sum = 0;
        for (int i = 0; i < feed.size(); i++) {
            sum += bubble
                    ? feed.moleFraction(i) * feed.component(i).vaporPressure(t)
                    : feed.moleFraction(i) / feed.component(i).vaporPressure(t);
        }
        return bubble ? sum : 1 / sum;
    }

    private static Optional<BoundaryPoint> near(
            Feed feed, Condition condition, double value, double t, boolean bubble) {
        int n = feed.size();
        double p = pressure(feed, t, bubble);
        double[] other = new double[n];
        double[] liquid = new double[n];
        for (int i = 0; i < n; i++) {
            double k = feed.component(i).vaporPressure(t) / p;
            other[i] = bubble ? feed.moleFraction(i) * k : feed.moleFraction(i) / k;
            liquid[i] = bubble ? feed.moleFraction(i) : other[i];
        }
        double rt = MixtureModel.GAS_CONSTANT * t;
        double rhoLiquid = liquidDensity(feed, t, p, liquid);
        double rhoVapor = p / rt;
        double rhoOther = bubble ? rhoVapor : rhoLiquid;
        for (int i = 0; i < n; i++) {
            other[i] *= rhoOther;
        }
        return BoundarySolver.solve(
                feed, condition, value, new BoundaryPoint(t, p, bubble ? rhoLiquid : rhoVapor, other));
    }

    /** Newton's method from the dense side, on which pressure is convex in density. */
    private static double liquidDensity(Feed feed, double t, double p, double[] x) {
        double rho = DENSE * feed.merged().reducingDensity();
        double[] amounts = new double[x.length];
        for (int k = 0; k < DENSITY_STEPS; k++) {
            for (int i = 0; i < x.length; i++) {
                amounts[i] = x[i] * rho;
            }
            MixturePhase phase = feed.phase(t, amounts);
            double slope = 0;
            for (int i = 0; i < x.length; i++) {
                slope += phase.reducedPressureByLogAmount(i);
            }
            double step = (p / (MixtureModel.GAS_CONSTANT * t) - phase.reducedPressure()) / slope;
            if (slope <= 0) {
                return rho * 1.1;
            }
            rho *= Math.exp(Math.max(-0.1, Math.min(0.1, step)));
            if (Math.abs(step) < DENSITY_GOOD) {
                return rho;
            }
        }
        return rho;
    }
}
