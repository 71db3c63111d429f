package io.loopstate.engine.coexistence;

import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.eos.MixturePhase;
import io.loopstate.engine.numerics.Deadline;
import io.loopstate.engine.numerics.Iteration;
import io.loopstate.engine.numerics.LinearSystem;
import java.util.Arrays;
import java.util.Optional;

/**
 * Points of the phase boundary by Newton's method: equal fugacities of all components, equal pressures, and one condition,
 * for the logarithms of the temperature, of the density of the whole, and of the amounts in the incipient phase.
 */
final class BoundarySolver {
    private static final int MAX_ITERATIONS = 40;
    private static final double LARGEST_STEP = 0.4;
    private static final double LARGEST_TEMPERATURE_STEP = 0.05;
    /** Newton squares the error: the next step would be below the last digit. */
    private static final double LAST_STEP = 1e-8;
    /** Steps this small that no longer shrink are rounding. */
    private static final double ROUNDING = 1e-6;
    /** Phases closer to each other than this are one and the same. */
    private static final double TRIVIAL = 1e-5;

    private BoundarySolver() {}

    /** What is given beside the composition. */
    enum Condition {
        /** K. */
        TEMPERATURE,
        /** Pa. */
        PRESSURE,
        /** Of the whole, mol/m3. */
        DENSITY
    }

    /** The point near the start, unless the iteration does not settle. */
    static Optional<BoundaryPoint> solve(Feed feed, Condition condition, double value, BoundaryPoint start) {
        Deadline.check();
        int n = feed.size();
        double logT = Math.log(condition == Condition.TEMPERATURE ? value : start.temperature());
        double logRho = Math.log(condition == Condition.DENSITY ? value : start.density());
        double[] log = Amounts.log(start.incipient());
        double previous = Double.POSITIVE_INFINITY;
        double[][] a = new double[n + 2][n + 2];
        double[] b = new double[n + 2];
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            double t = Math.exp(logT);
            MixturePhase whole = feed.phase(t, Math.exp(logRho));
            MixturePhase incipient = feed.phase(t, Amounts.exp(log));
            equations(whole, incipient, a, b);
            condition(condition, value, logT, logRho, whole, incipient, a[n + 1], b);
            LinearSystem.solve(a, b);
            double size = LinearSystem.largest(b);
            if (!(size < Double.POSITIVE_INFINITY)) {
                Iteration.BOUNDARY.gaveUp(k + 1);
                return Optional.empty();
            }
            double damping = Math.min(1, Math.min(LARGEST_STEP / size, LARGEST_TEMPERATURE_STEP / Math.abs(b[0])));
            logT += damping * b[0];
            logRho += damping * b[1];
            for (int i = 0; i < n; i++) {
                log[i] += damping * b[i + 2];
            }
            if (size <= LAST_STEP || size <= ROUNDING && size > 0.5 * previous) {
                Iteration.BOUNDARY.converged(k + 1);
                return finish(feed, condition, value, logT, logRho, Amounts.exp(log));
            }
            previous = size;
        }
        Iteration.BOUNDARY.gaveUp(MAX_ITERATIONS);
        return Optional.empty();
    }

    /** Fugacities and pressure; columns are ln T, ln rho, ln of the amounts. */
    private static void equations(MixturePhase whole, MixturePhase incipient, double[][] a, double[] b) {
        int n = b.length - 2;
        double scale = 1 / Math.min(whole.density(), incipient.density());
        double byRho = 0;
        for (int i = 0; i < n; i++) {
            a[i][0] = whole.logFugacityByLogTemperature(i) - incipient.logFugacityByLogTemperature(i);
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += whole.logFugacityByLogAmount(i, j);
                a[i][j + 2] = -incipient.logFugacityByLogAmount(i, j);
            }
            a[i][1] = sum;
            b[i] = incipient.logFugacity(i) - whole.logFugacity(i);
            byRho += whole.reducedPressureByLogAmount(i);
            a[n][i + 2] = -scale * incipient.reducedPressureByLogAmount(i);
        }
        a[n][0] = scale * (whole.reducedPressureByLogTemperature() - incipient.reducedPressureByLogTemperature());
        a[n][1] = scale * byRho;
        b[n] = scale * (incipient.reducedPressure() - whole.reducedPressure());
    }

    private static void condition(
            Condition condition,
            double value,
            double logT,
            double logRho,
            MixturePhase whole,
            MixturePhase incipient,
            double[] row,
            double[] b) {
        int n = b.length - 2;
        Arrays.fill(row, 0);
        switch (condition) {
            case TEMPERATURE -> {
                row[0] = 1;
                b[n + 1] = Math.log(value) - logT;
            }
            case DENSITY -> {
                row[1] = 1;
                b[n + 1] = Math.log(value) - logRho;
            }
            case PRESSURE -> {
                // of the lighter phase, whose pressure is the better known
                double rt = MixtureModel.GAS_CONSTANT * whole.temperature();
                boolean light = whole.density() < incipient.density();
                MixturePhase phase = light ? whole : incipient;
                double scale = 1 / phase.density();
                row[0] = scale * (phase.reducedPressureByLogTemperature() + phase.reducedPressure());
                for (int i = 0; i < n; i++) {
                    double slope = scale * phase.reducedPressureByLogAmount(i);
                    if (light) {
                        row[1] += slope;
                    } else {
                        row[i + 2] = slope;
                    }
                }
                b[n + 1] = scale * (value / rt - phase.reducedPressure());
            }
        }
    }

    private static Optional<BoundaryPoint> finish(
            Feed feed, Condition condition, double value, double logT, double logRho, double[] incipient) {
        double t = condition == Condition.TEMPERATURE ? value : Math.exp(logT);
        double rho = condition == Condition.DENSITY ? value : Math.exp(logRho);
        double difference = 0;
        for (int i = 0; i < incipient.length; i++) {
            difference = Math.max(difference, Math.abs(incipient[i] / (rho * feed.moleFraction(i)) - 1));
        }
        if (difference < TRIVIAL) {
            return Optional.empty();
        }
        double p = condition == Condition.PRESSURE ? value : pressure(feed, t, rho, incipient);
        return p > 0 ? Optional.of(new BoundaryPoint(t, p, rho, incipient)) : Optional.empty();
    }

    private static double pressure(Feed feed, double t, double rho, double[] incipient) {
        MixturePhase light = feed.phase(t, incipient);
        if (light.density() > rho) {
            light = feed.phase(t, rho);
        }
        return light.reducedPressure() * MixtureModel.GAS_CONSTANT * t;
    }
}
