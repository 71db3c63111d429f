package io.loopstate.engine.coexistence;

import io.loopstate.engine.coexistence.BoundarySolver.Condition;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.numerics.ChebyshevPieces;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * The lines break off below the critical point, where a false phase of the model, denser than the vapor and thinner than the
 * liquid, takes the liquid's place. What lies between is not represented and refused.
 */
final class BoundaryGap implements BoundaryMiddle {
    /** Steps of the temperature, as a ratio. */
    private static final double STEP = 1.005;

    private static final double CLOSE = 1e-5;
    /** Distance kept from where the lines break off, as a ratio of temperatures. */
    private static final double BELOW = 0.999;
    /** Share of the critical temperature up to which the lines have to be known. */
    private static final double NARROWEST = 0.97;
    /** Change of density in one step by which a line has gone over to another phase. */
    private static final double JUMP = 0.2;

    private static final double WIDTH = 0.05;
    /** Keeps the rounding of a place on the series off the gap. */
    private static final double WITHIN = 1 - 1e-6;

    private static final double ROUNDING = 1e-12;

    private final BoundaryBranches branches;
    private final BoundaryPoint critical;
    private final BoundaryPoint lastBubble;
    private final BoundaryPoint lastDew;
    private final double from;
    private final double to;

    private BoundaryGap(
            BoundaryBranches branches, BoundaryPoint critical, BoundaryPoint lastBubble, BoundaryPoint lastDew) {
        this.branches = branches;
        this.critical = critical;
        this.lastBubble = lastBubble;
        this.lastDew = lastDew;
        // so that both lines are followed toward their ends and not past them
        branches.bubbles().keep(lastBubble);
        branches.dews().keep(lastDew);
        from = Math.log(lastDew.density());
        to = Math.log(lastBubble.density());
    }

    /** Bubble and dew point at one temperature. */
    private record Pair(BoundaryPoint bubble, BoundaryPoint dew) {
        double temperature() {
            return bubble.temperature();
        }

        Optional<Pair> at(Feed feed, double t) {
            return BoundarySolver.solve(feed, Condition.TEMPERATURE, t, bubble)
                    .filter(b -> same(b, bubble))
                    .flatMap(b -> BoundarySolver.solve(feed, Condition.TEMPERATURE, t, dew)
                            .filter(d -> same(d, dew))
                            .map(d -> new Pair(b, d)));
        }

        private static boolean same(BoundaryPoint a, BoundaryPoint b) {
            return Math.abs(a.density() / b.density() - 1) < JUMP
                    && Math.abs(a.incipientDensity() / b.incipientDensity() - 1) < JUMP;
        }
    }

    /** The gap, if the lines break off because of a false phase. */
    static Optional<BoundaryGap> of(BoundaryBranches cold) {
        Feed feed = cold.feed();
        BoundaryNodes bubbles = new BoundaryNodes(feed, true);
        BoundaryNodes dews = new BoundaryNodes(feed, false);
        Pair low = new Pair(bubbles.first(), dews.first());
        Optional<Pair> start = low.at(feed, Math.min(low.bubble.temperature(), low.dew.temperature()));
        if (start.isEmpty()) {
            return Optional.empty();
        }
        Deque<Pair> passed = new ArrayDeque<>(List.of(start.get()));
        double factor = STEP;
        while (factor > 1 + CLOSE) {
            Pair last = passed.getLast();
            Optional<Pair> next = last.at(feed, last.temperature() * factor);
            next.ifPresent(passed::addLast);
            factor = next.isPresent() ? factor : Math.sqrt(factor);
        }
        double highest = BELOW * passed.getLast().temperature();
        passed.removeIf(pair -> pair.temperature() > highest);
        return passed.getLast().at(feed, highest).flatMap(end -> before(cold, end));
    }

    /** The gap from a pair of points to the critical point, unless that is too far. */
    private static Optional<BoundaryGap> before(BoundaryBranches cold, Pair end) {
        Feed feed = cold.feed();
        BoundaryPoint critical =
                CriticalMixturePoint.near(feed, end.temperature(), Math.sqrt(end.bubble.density() * end.dew.density()));
        double share = end.temperature() / critical.temperature();
        return share > NARROWEST && share < 1
                ? Optional.of(new BoundaryGap(
                        BoundaryBranches.from(feed, cold.minTemperature()), critical, end.bubble, end.dew))
                : Optional.empty();
    }

    @Override
    public BoundaryPoint critical() {
        return critical;
    }

    /** A straight line across the gap holds its place. */
    @Override
    public ChebyshevPieces pieces(ToDoubleFunction<BoundaryPoint> value) {
        double dew = value.applyAsDouble(lastDew);
        double bubble = value.applyAsDouble(lastBubble);
        DoubleUnaryOperator across = s -> dew + (bubble - dew) * (s - from) / (to - from);
        return ChebyshevPieces.graded(
                        s -> value.applyAsDouble(branches.dews().at(s)), from, branches.thin(), WIDTH, TOLERANCE)
                .then(ChebyshevPieces.single(across, from, to))
                .then(ChebyshevPieces.graded(
                        s -> value.applyAsDouble(branches.bubbles().at(s)), to, branches.dense(), WIDTH, TOLERANCE));
    }

    @Override
    public BoundaryLine line(ToDoubleFunction<BoundaryPoint> value) {
        return BoundaryLine.open(pieces(value), from, to, value.applyAsDouble(critical));
    }

    @Override
    public boolean converged() {
        return true;
    }

    @Override
    public boolean hidden() {
        return true;
    }

    @Override
    public double maxTemperature() {
        return lastBubble.temperature() * WITHIN;
    }

    @Override
    public double maxPressure(boolean denser) {
        return (denser ? lastBubble : lastDew).pressure() * WITHIN;
    }

    @Override
    public void requireKnown(Variable variable, double got, double lower, double upper) {
        if (got > upper * (1 + ROUNDING)) {
            throw EngineException.of(
                    ErrorCode.OUT_OF_RANGE,
                    "between here and its critical point the model of this mixture has a false phase",
                    variable,
                    got,
                    lower,
                    upper);
        }
    }
}
