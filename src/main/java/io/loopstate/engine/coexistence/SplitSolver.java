package io.loopstate.engine.coexistence;

import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.eos.MixturePhase;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.numerics.Deadline;
import io.loopstate.engine.numerics.Iteration;
import io.loopstate.engine.numerics.LinearSystem;
import java.util.Arrays;
import java.util.Optional;

/**
 * Liquid and vapor of a mixture by Newton's method: equal fugacities, equal pressures, the balance of every component, and
 * two conditions, for ln T, the vapor fraction and the logarithms of the amounts in both phases, all at once.
 */
final class SplitSolver {
    private static final int MAX_ITERATIONS = 30;
    private static final double LARGEST_STEP = 0.4;
    private static final double LARGEST_TEMPERATURE_STEP = 0.05;
    private static final double LARGEST_FRACTION_STEP = 0.4;
    /** Newton squares the error: the next step would be below the last digit. */
    private static final double LAST_STEP = 1e-8;

    private static final double ROUNDING = 1e-7;
    /** Close to the critical point the rounding of the equations is magnified: they are satisfied, and steps go on. */
    private static final double SATISFIED = 1e-12;

    private static final double MAGNIFIED = 1e-5;
    /** Phases closer to each other than this may be one and the same, since they satisfy the equations to their rounding. */
    private static final double TRIVIAL = 1e-3;
    /** Overshoot of the vapor fraction by rounding. */
    private static final double EDGE = 1e-9;

    private final Feed feed;
    private final int n;
    private final SplitVariable first;
    private final double firstValue;
    private final SplitVariable second;
    private final double secondValue;

    /** Starting values, or an iterate. */
    record Iterate(double logTemperature, double vaporFraction, double[] liquid, double[] vapor) {}

    SplitSolver(Feed feed, SplitVariable first, double firstValue, SplitVariable second, double secondValue) {
        this.feed = feed;
        this.n = feed.size();
        this.first = first;
        this.firstValue = firstValue;
        this.second = second;
        this.secondValue = secondValue;
    }

    /**
     * The split near the start, unless the iteration does not settle.
     *
     * @param start with the logarithms of the amounts
     */
    Optional<Split> solve(Iterate start) {
        Deadline.check();
        double logT = first == SplitVariable.TEMPERATURE ? Math.log(firstValue) : start.logTemperature();
        double beta = start.vaporFraction();
        double[] liquid = start.liquid().clone();
        double[] vapor = start.vapor().clone();
        double[][] a = new double[2 * n + 2][2 * n + 2];
        double[] b = new double[2 * n + 2];
        double previous = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            double t = Math.exp(logT);
            MixturePhase l = feed.phase(t, Amounts.exp(liquid));
            MixturePhase v = feed.phase(t, Amounts.exp(vapor));
            fill(a, b, logT, beta, l, v);
            double residual = LinearSystem.largest(b);
            LinearSystem.solve(a, b);
            double size = LinearSystem.largest(b);
            if (!(size < Double.POSITIVE_INFINITY)) {
                Iteration.DIVISION.gaveUp(k + 1);
                return Optional.empty();
            }
            double damping = Math.min(1, LARGEST_STEP / size);
            damping = Math.min(damping, LARGEST_TEMPERATURE_STEP / Math.abs(b[0]));
            damping = Math.min(damping, LARGEST_FRACTION_STEP / Math.abs(b[1]));
            logT += damping * b[0];
            double moved = beta + damping * b[1];
            beta = moved < 0 ? 0.1 * beta : moved > 1 ? 1 - 0.1 * (1 - beta) : moved;
            for (int i = 0; i < n; i++) {
                liquid[i] += damping * b[2 + i];
                vapor[i] += damping * b[2 + n + i];
            }
            double rounding = residual <= SATISFIED ? MAGNIFIED : ROUNDING;
            if (size <= LAST_STEP || size <= rounding && size > 0.5 * previous) {
                Iteration.DIVISION.converged(k + 1);
                boolean inside = moved >= -EDGE && moved <= 1 + EDGE;
                // equations of state have false phases on their loops
                return inside && l.locallyStable() && v.locallyStable()
                        ? finish(logT, beta, Amounts.exp(liquid), Amounts.exp(vapor))
                        : Optional.empty();
            }
            previous = size;
        }
        Iteration.DIVISION.gaveUp(MAX_ITERATIONS);
        return Optional.empty();
    }

    /** Columns: ln T, vapor fraction, ln of the liquid's amounts, ln of the vapor's amounts. */
    private void fill(double[][] a, double[] b, double logT, double beta, MixturePhase l, MixturePhase v) {
        for (double[] row : a) {
            Arrays.fill(row, 0);
        }
        for (int i = 0; i < n; i++) {
            a[i][0] = l.logFugacityByLogTemperature(i) - v.logFugacityByLogTemperature(i);
            for (int j = 0; j < n; j++) {
                a[i][2 + j] = l.logFugacityByLogAmount(i, j);
                a[i][2 + n + j] = -v.logFugacityByLogAmount(i, j);
            }
            b[i] = v.logFugacity(i) - l.logFugacity(i);
        }
        double scale = 1 / v.density();
        a[n][0] = scale * (l.reducedPressureByLogTemperature() - v.reducedPressureByLogTemperature());
        for (int j = 0; j < n; j++) {
            a[n][2 + j] = scale * l.reducedPressureByLogAmount(j);
            a[n][2 + n + j] = -scale * v.reducedPressureByLogAmount(j);
        }
        b[n] = scale * (v.reducedPressure() - l.reducedPressure());
        for (int i = 0; i < n - 1; i++) {
            balance(a[n + 1 + i], b, n + 1 + i, i, beta, l, v);
        }
        condition(a[2 * n], b, 2 * n, first, firstValue, logT, beta, l, v);
        condition(a[2 * n + 1], b, 2 * n + 1, second, secondValue, logT, beta, l, v);
    }

    /** {@code (1 - beta) x_i + beta y_i = z_i}. */
    private void balance(double[] row, double[] b, int place, int i, double beta, MixturePhase l, MixturePhase v) {
        double x = l.moleFraction(i);
        double y = v.moleFraction(i);
        row[1] = y - x;
        for (int j = 0; j < n; j++) {
            double same = i == j ? 1 : 0;
            row[2 + j] = (1 - beta) * x * (same - l.moleFraction(j));
            row[2 + n + j] = beta * y * (same - v.moleFraction(j));
        }
        b[place] = feed.moleFraction(i) - (1 - beta) * x - beta * y;
    }

    private void condition(
            double[] row,
            double[] b,
            int place,
            SplitVariable variable,
            double value,
            double logT,
            double beta,
            MixturePhase l,
            MixturePhase v) {
        switch (variable) {
            case TEMPERATURE -> {
                row[0] = 1;
                b[place] = Math.log(value) - logT;
            }
            case PRESSURE -> {
                double scale = 1 / v.density();
                row[0] = scale * (v.reducedPressureByLogTemperature() + v.reducedPressure());
                for (int j = 0; j < n; j++) {
                    row[2 + n + j] = scale * v.reducedPressureByLogAmount(j);
                }
                b[place] = scale * (value / (MixtureModel.GAS_CONSTANT * v.temperature()) - v.reducedPressure());
            }
            case VAPOR_FRACTION -> {
                row[1] = 1;
                b[place] = value - beta;
            }
            case QUALITY -> quality(row, b, place, value, beta, v);
            default -> mixed(row, b, place, variable, value, beta, l, v);
        }
    }

    /** {@code beta sum y_i M_i = q M}. */
    private void quality(double[] row, double[] b, int place, double value, double beta, MixturePhase v) {
        double m = feed.molarMass();
        double vapor = 0;
        for (int i = 0; i < n; i++) {
            vapor += v.moleFraction(i) * feed.component(i).molarMass();
        }
        row[1] = vapor / m;
        for (int j = 0; j < n; j++) {
            row[2 + n + j] = beta * v.moleFraction(j) * (feed.component(j).molarMass() - vapor) / m;
        }
        b[place] = value - beta * vapor / m;
    }

    /** A molar property of the whole, the sum of the phases' by their fractions. */
    private void mixed(
            double[] row,
            double[] b,
            int place,
            SplitVariable variable,
            double value,
            double beta,
            MixturePhase l,
            MixturePhase v) {
        MolarState ls = l.state();
        MolarState vs = v.state();
        double ofLiquid = PhaseProperty.value(variable, ls);
        double ofVapor = PhaseProperty.value(variable, vs);
        double scale = 1 / PhaseProperty.scale(variable, vs);
        row[0] = scale
                * ((1 - beta) * PhaseProperty.byLogTemperature(variable, ls)
                        + beta * PhaseProperty.byLogTemperature(variable, vs));
        row[1] = scale * (ofVapor - ofLiquid);
        for (int j = 0; j < n; j++) {
            row[2 + j] = scale * (1 - beta) * PhaseProperty.byLogAmount(variable, l, ls, j);
            row[2 + n + j] = scale * beta * PhaseProperty.byLogAmount(variable, v, vs, j);
        }
        b[place] = scale * (value - (1 - beta) * ofLiquid - beta * ofVapor);
    }

    private Optional<Split> finish(double logT, double beta, double[] liquid, double[] vapor) {
        double difference = 0;
        for (int i = 0; i < n; i++) {
            difference = Math.max(difference, Math.abs(liquid[i] / vapor[i] - 1));
        }
        if (difference < TRIVIAL) {
            return Optional.empty();
        }
        double t = first == SplitVariable.TEMPERATURE ? firstValue : Math.exp(logT);
        MixturePhase l = feed.phase(t, liquid);
        MixturePhase v = feed.phase(t, vapor);
        double mass = 0;
        for (int i = 0; i < n; i++) {
            mass += v.moleFraction(i) * feed.component(i).molarMass();
        }
        double p = first == SplitVariable.PRESSURE ? firstValue : v.reducedPressure() * MixtureModel.GAS_CONSTANT * t;
        double quality = second == SplitVariable.QUALITY ? secondValue : beta * mass / feed.molarMass();
        return Optional.of(new Split(feed, l.state(), v.state(), p, beta, quality, liquid, vapor));
    }
}
