package io.loopstate.engine.coexistence;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.numerics.Roots;
import java.util.Optional;

/**
 * The division into liquid and vapor at a temperature or a pressure and one more property of the whole, for states known to
 * lie inside the phase boundary.
 *
 * <p>Newton's method from a line between the two points of the boundary; where that does not settle, a bracketed search over
 * the vapor fraction, each step of which starts from the one before.
 */
public final class MixtureSplit {
    private static final int LADDER = 24;
    private static final double SEARCH_TOLERANCE = 1e-14;
    private static final double ROUNDING = 1e-9;
    /** How far, relative, the density of a phase may lie beyond its densities at both ends. */
    private static final double BEYOND = 0.15;

    /** How close to the critical temperature, as a share of it, liquid and vapor can be told apart; found by trial. */
    public static final double CRITICAL_TEMPERATURES = 1e-4;
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
        Optional<Split> split = new SplitSolver(feed, fixed, fixedValue, second, value)
                .solve(line.at(Math.max(0, Math.min(1, share))))
                .filter(line::holds)
                .filter(this::settled);
        return split.or(() -> search(line, new Search(feed, fixed, fixedValue, second, value))
                        .filter(line::holds)
                        .filter(this::settled))
                .orElseThrow(() -> refusal(isotherm, fixedValue));
    }

    /** Not found where it does not settle; whether that is a limit or a defect is said above. */
    private static Optional<Split> search(Line line, Search search) {
        try {
            return search.along(line);
        } catch (EngineException e) {
            if (e.code() == ErrorCode.NOT_CONVERGED) {
                return Optional.empty();
            }
            throw e;
        }
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

    /** Whether the liquid is one liquid; where there may be two the equations have further solutions. */
    private boolean settled(Split split) {
        return split.temperature() >= boundary.oneLiquidAbove() || split.liquidStable();
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
            double fraction = mix(dense.bubble() ? 0 : 1, thin.bubble() ? 0 : 1, share);
            return new SplitSolver.Iterate(
                    mix(Math.log(dense.temperature()), Math.log(thin.temperature()), share), fraction, liquid, vapor);
        }

        /** Whether a split lies between the ends; equations of state have false phases that it may have run to. */
        boolean holds(Split split) {
            return between(split.temperature(), dense.temperature(), thin.temperature(), ROUNDING)
                    && between(split.pressure(), thin.pressure(), dense.pressure(), ROUNDING)
                    && between(split.liquid().density(), density(dense, true), density(thin, true), BEYOND)
                    && between(split.vapor().density(), density(dense, false), density(thin, false), BEYOND);
        }

        private static boolean between(double value, double a, double b, double beyond) {
            return value >= Math.min(a, b) * (1 - beyond) && value <= Math.max(a, b) * (1 + beyond);
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

    /** The slower way, over the vapor fraction. */
    private static final class Search {
        private final Feed feed;
        private final SplitVariable fixed;
        private final double fixedValue;
        private final SplitVariable second;
        private final double value;

        Search(Feed feed, SplitVariable fixed, double fixedValue, SplitVariable second, double value) {
            this.feed = feed;
            this.fixed = fixed;
            this.fixedValue = fixedValue;
            this.second = second;
            this.value = value;
        }

        Optional<Split> along(Line line) {
            Split before = null;
            SplitSolver.Iterate start = line.at(0);
            for (int k = 0; k <= LADDER; k++) {
                // closest together at both ends, where little of a phase is left and its composition changes most
                double x = (double) k / LADDER;
                double fraction = x * x * (3 - 2 * x);
                Optional<Split> step = at(fraction, start);
                if (step.isEmpty()) {
                    return Optional.empty();
                }
                Split here = step.get();
                if (before != null && (excess(before) <= 0) != (excess(here) <= 0)) {
                    return refine(before, here);
                }
                before = here;
                start = iterate(here);
            }
            return Optional.empty();
        }

        private Optional<Split> refine(Split low, Split high) {
            SplitSolver.Iterate start = iterate(low);
            double fraction = Roots.brent(
                    x -> at(x, start).map(this::excess).orElse(Double.NaN),
                    low.vaporFraction(),
                    high.vaporFraction(),
                    SEARCH_TOLERANCE,
                    "search over the vapor fraction");
            return at(fraction, start)
                    .flatMap(s -> new SplitSolver(feed, fixed, fixedValue, second, value).solve(iterate(s)));
        }

        private Optional<Split> at(double fraction, SplitSolver.Iterate start) {
            SplitSolver.Iterate moved =
                    new SplitSolver.Iterate(start.logTemperature(), fraction, start.liquid(), start.vapor());
            return new SplitSolver(feed, fixed, fixedValue, SplitVariable.VAPOR_FRACTION, fraction).solve(moved);
        }

        private static SplitSolver.Iterate iterate(Split split) {
            return new SplitSolver.Iterate(
                    Math.log(split.temperature()),
                    split.vaporFraction(),
                    Amounts.log(split.liquidAmounts()),
                    Amounts.log(split.vaporAmounts()));
        }

        private double excess(Split split) {
            return switch (second) {
                case TEMPERATURE -> split.temperature() - value;
                case PRESSURE -> split.pressure() - value;
                case QUALITY -> split.quality() - value;
                case VAPOR_FRACTION -> split.vaporFraction() - value;
                default ->
                    split.mix(PhaseProperty.value(second, split.liquid()), PhaseProperty.value(second, split.vapor()))
                            - value;
            };
        }
    }
}
