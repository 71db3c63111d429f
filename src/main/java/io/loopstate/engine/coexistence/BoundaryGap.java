package io.loopstate.engine.coexistence;

import io.loopstate.engine.coexistence.BoundarySolver.Condition;
import io.loopstate.engine.numerics.ChebyshevPieces;
import java.util.ArrayDeque;
import java.util.Deque;
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

    private final BoundaryBranches branches;
    private final BoundaryPoint critical;
    private final Ends last;
    private final double from;
    private final double to;

    private BoundaryGap(BoundaryBranches branches, BoundaryPoint critical, Ends last) {
        this.branches = branches;
        this.critical = critical;
        this.last = last;
        // so that both lines are followed toward their ends and not past them
        branches.bubbles().keep(last.bubble());
        branches.dews().keep(last.dew());
        from = Math.log(last.dew().density());
        to = Math.log(last.bubble().density());
    }

    /**
     * The gap, if the lines break off because of a false phase.
     *
     * @param tried branches that may have gone over to that phase; they are followed anew
     */
    static Optional<BoundaryGap> of(BoundaryBranches tried) {
        Feed feed = tried.feed();
        BoundaryBranches branches = BoundaryBranches.from(feed, tried.minTemperature());
        Ends start =
                new Ends(branches.bubbles().nearestCritical(), branches.dews().nearestCritical());
        Deque<Ends> passed = new ArrayDeque<>();
        at(feed, start, Math.min(start.bubble().temperature(), start.dew().temperature()))
                .ifPresent(passed::add);
        double factor = passed.isEmpty() ? 1 : STEP;
        while (factor > 1 + CLOSE) {
            Ends last = passed.getLast();
            Optional<Ends> next = at(feed, last, last.bubble().temperature() * factor);
            next.ifPresent(passed::addLast);
            factor = next.isPresent() ? factor : Math.sqrt(factor);
        }
        if (passed.isEmpty()) {
            return Optional.empty();
        }
        double highest = BELOW * passed.getLast().bubble().temperature();
        passed.removeIf(ends -> ends.bubble().temperature() > highest);
        return Optional.ofNullable(passed.peekLast())
                .flatMap(ends -> at(feed, ends, highest))
                .flatMap(ends -> before(branches, ends));
    }

    private static Optional<Ends> at(Feed feed, Ends from, double t) {
        return BoundarySolver.solve(feed, Condition.TEMPERATURE, t, from.bubble())
                .filter(bubble -> same(bubble, from.bubble()))
                .flatMap(bubble -> BoundarySolver.solve(feed, Condition.TEMPERATURE, t, from.dew())
                        .filter(dew -> same(dew, from.dew()))
                        .map(dew -> new Ends(bubble, dew)));
    }

    private static boolean same(BoundaryPoint a, BoundaryPoint b) {
        return Math.abs(a.density() / b.density() - 1) < JUMP
                && Math.abs(a.incipientDensity() / b.incipientDensity() - 1) < JUMP;
    }

    /** The gap from both ends to the critical point, unless that is too far. */
    private static Optional<BoundaryGap> before(BoundaryBranches branches, Ends ends) {
        BoundaryPoint critical = CriticalMixturePoint.near(
                branches.feed(),
                ends.bubble().temperature(),
                Math.sqrt(ends.bubble().density() * ends.dew().density()));
        double share = ends.bubble().temperature() / critical.temperature();
        return share > NARROWEST && share < 1
                ? Optional.of(new BoundaryGap(branches, critical, ends))
                : Optional.empty();
    }

    @Override
    public BoundaryPoint critical() {
        return critical;
    }

    /** A straight line across the gap holds its place. */
    @Override
    public ChebyshevPieces pieces(ToDoubleFunction<BoundaryPoint> value) {
        double dew = value.applyAsDouble(last.dew());
        double bubble = value.applyAsDouble(last.bubble());
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
    public Optional<Ends> ends() {
        return Optional.of(last);
    }
}
