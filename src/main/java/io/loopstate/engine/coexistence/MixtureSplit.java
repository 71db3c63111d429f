package io.loopstate.engine.coexistence;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import java.util.Optional;

/**
 * The division into liquid and vapor at a temperature or a pressure and one more property of the whole, for states known to
 * lie inside the phase boundary.
 *
 * <p>Newton's method from a line between the two points of the boundary; where that does not settle, a search from one of
 * them, each step of which starts from the one before.
 */
public final class MixtureSplit {
    private static final double FIRST_STEP = 0.1;
    /** A search that succeeds takes up to 60; so many are at most about 50 ms. */
    private static final int MOST_STEPS = 64;

    private static final double ROUNDING = 1e-9;
    /** How far, relative, the density of a phase may lie beyond its densities at both ends. */
    private static final double BEYOND = 0.15;
    /** The same of a liquid that is denser than both, as mixtures far from ideal have near the critical point; false ones are thin. */
    private static final double DENSER = 0.5;
    /** The same beyond which a liquid is looked at more closely. */
    private static final double USUAL = 0.01;

    /** How close to the critical temperature, as a share of it, liquid and vapor can be told apart; found by trial. */
    public static final double CRITICAL_TEMPERATURES = 2e-4;
    /** The same of pressures, which go with about the seventh power of the temperature there. */
    private static final double CRITICAL_PRESSURES = 1e-3;

    private final PhaseBoundary boundary;
    private final Feed feed;

    public MixtureSplit(PhaseBoundary boundary) {
        this.boundary = boundary;
        this.feed = boundary.feed();
    }

    /**
     * @param fixed TEMPERATURE or PRESSURE
     * @param second any other variable
     * @param share about how far the state is from the dense end, 0 to 1
     * @throws EngineException TWO_PHASE_UNDEFINED close to the critical point; NOT_CONVERGED
     */
    public Split at(SplitVariable fixed, double fixedValue, SplitVariable second, double value, double share) {
        boolean isotherm = fixed == SplitVariable.TEMPERATURE;
        BoundaryPoint dense =
                isotherm ? boundary.atTemperature(fixedValue, true) : boundary.atPressure(fixedValue, true);
        BoundaryPoint thin =
                isotherm ? boundary.atTemperature(fixedValue, false) : boundary.atPressure(fixedValue, false);
        Line line = new Line(feed, dense, thin);
        Search search = new Search(feed, fixed, fixedValue, second, value);
        return search.at(value, line.at(Math.max(0, Math.min(1, share))))
                .filter(line::holds)
                .filter(split -> settled(line, split))
                .or(() -> search.along(line).filter(split -> settled(line, split)))
                .orElseThrow(() -> refusal(isotherm, fixedValue));
    }

    /** Close to the critical point the two sides of the boundary have more than one point at a temperature: a limit, no defect. */
    private EngineException refusal(boolean isotherm, double value) {
        double critical = isotherm
                ? boundary.critical().temperature()
                : boundary.critical().pressure();
        if (Math.abs(value / critical - 1) <= (isotherm ? CRITICAL_TEMPERATURES : CRITICAL_PRESSURES)) {
            return EngineException.of(
                    ErrorCode.TWO_PHASE_UNDEFINED,
                    "so close to the critical point that liquid and vapor cannot be told apart",
                    isotherm ? Variable.TEMPERATURE : Variable.PRESSURE,
                    value,
                    Double.NaN,
                    critical);
        }
        return EngineException.of(
                ErrorCode.NOT_CONVERGED, "division into liquid and vapor at " + value + (isotherm ? " K" : " Pa"));
    }

    /** Whether the liquid is one liquid; where there may be two, or none as dense as this, the equations have further solutions. */
    private boolean settled(Line line, Split split) {
        boolean usual = split.temperature() >= boundary.oneLiquidAbove() && line.liquidBetween(split, USUAL, USUAL);
        return usual || split.liquidStable();
    }

    /** Starting values between the two points of the boundary. */
    private record Line(Feed feed, BoundaryPoint dense, BoundaryPoint thin) {
        SplitSolver.Iterate at(double share) {
            int n = feed.size();
            double[] liquid = new double[n];
            double[] vapor = new double[n];
            for (int i = 0; i < n; i++) {
                liquid[i] = mix(logAmount(dense, true, i), logAmount(thin, true, i), share);
                vapor[i] = mix(logAmount(dense, false, i), logAmount(thin, false, i), share);
            }
            double fraction = mix(vaporFraction(dense), vaporFraction(thin), share);
            return new SplitSolver.Iterate(
                    mix(Math.log(dense.temperature()), Math.log(thin.temperature()), share), fraction, liquid, vapor);
        }

        static double vaporFraction(BoundaryPoint end) {
            return end.bubble() ? 0 : 1;
        }

        /** Whether a split lies between the ends; equations of state have false phases that it may have run to. */
        boolean holds(Split split) {
            return between(split.temperature(), dense.temperature(), thin.temperature(), ROUNDING)
                    && between(split.pressure(), thin.pressure(), dense.pressure(), ROUNDING)
                    && split.liquid().density() > split.vapor().density()
                    && liquidBetween(split, BEYOND, DENSER)
                    && between(split.vapor().density(), density(dense, false), density(thin, false), BEYOND);
        }

        boolean liquidBetween(Split split, double below, double above) {
            return between(split.liquid().density(), density(dense, true), density(thin, true), below, above);
        }

        private static boolean between(double value, double a, double b, double beyond) {
            return between(value, a, b, beyond, beyond);
        }

        private static boolean between(double value, double a, double b, double below, double above) {
            return value >= Math.min(a, b) * (1 - below) && value <= Math.max(a, b) * (1 + above);
        }

        private static double density(BoundaryPoint point, boolean liquid) {
            return point.bubble() == liquid ? point.density() : point.incipientDensity();
        }

        private double logAmount(BoundaryPoint point, boolean liquid, int i) {
            boolean whole = point.bubble() == liquid;
            return Math.log(whole ? feed.moleFraction(i) * point.density() : point.incipient()[i]);
        }

        private static double mix(double a, double b, double share) {
            return a + share * (b - a);
        }
    }

    /**
     * The slower way, in steps of the second variable from an end of the line: from the one where the phases differ most, since
     * close to the critical point Newton's method runs from a bad start to phases that are one and the same.
     */
    private record Search(Feed feed, SplitVariable fixed, double fixedValue, SplitVariable second, double value) {
        Optional<Split> along(Line line) {
            boolean fromDense = line.dense().contrast() > line.thin().contrast();
            return along(line, fromDense).or(() -> along(line, !fromDense));
        }

        private Optional<Split> along(Line line, boolean fromDense) {
            double from = value(fromDense ? line.dense() : line.thin());
            SplitSolver.Iterate start = line.at(fromDense ? 0 : 1);
            double share = 0;
            double step = FIRST_STEP;
            for (int k = 0; k < MOST_STEPS; k++) {
                double next = Math.min(1, share + step);
                Optional<Split> found = at(next == 1 ? value : from + next * (value - from), start)
                        .filter(line::holds);
                if (found.isPresent() && next == 1) {
                    return found;
                }
                if (found.isPresent()) {
                    share = next;
                    start = iterate(found.get());
                }
                step *= found.isPresent() ? 2 : 0.5;
            }
            return Optional.empty();
        }

        Optional<Split> at(double target, SplitSolver.Iterate start) {
            return new SplitSolver(feed, fixed, fixedValue, second, target).solve(start);
        }

        private double value(BoundaryPoint end) {
            return switch (second) {
                case TEMPERATURE -> end.temperature();
                case PRESSURE -> end.pressure();
                case QUALITY, VAPOR_FRACTION -> Line.vaporFraction(end);
                default ->
                    PhaseProperty.value(
                            second, feed.phase(end.temperature(), end.density()).state());
            };
        }

        private static SplitSolver.Iterate iterate(Split split) {
            return new SplitSolver.Iterate(
                    Math.log(split.temperature()),
                    split.vaporFraction(),
                    Amounts.log(split.liquidAmounts()),
                    Amounts.log(split.vaporAmounts()));
        }
    }
}
