package io.loopstate.engine.balance;

import io.loopstate.engine.balance.Levels.Attempt;
import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Roots;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The sure way to the two pressures: for each evaporating pressure the condensing one at which the condenser is in balance,
 * inside a bracket; and the evaporating pressure at which the evaporator then is, inside another. With a higher evaporating
 * pressure more refrigerant flows through a coil that has less to draw heat by, so that there is one. At most 120 pressures are
 * tried in each bracket.
 */
final class BracketSearch {
    /** How far a search goes: of y, relative, and of a coil's area where a bracket that closed holds no jump. */
    enum Precision {
        /** Enough to tell which component has no balance, or to start from. */
        COARSE(1e-6, 1e-3),
        /** To rounding. */
        FINE(1e-13, 1e-6);

        private final double tolerance;
        private final double closed;

        Precision(double tolerance, double closed) {
            this.tolerance = tolerance;
            this.closed = closed;
        }
    }

    /** Enough to tell larger from smaller. */
    private static final double COARSE = 1e-6;

    private static final double FAR = Column.FAR;
    /** First stride from a guess of a variable. */
    private static final double STRIDE = 0.25;
    /** Least ratio of the pressures that is tried. */
    static final double LEAST_RATIO = 1 + 1e-4;

    private final LevelSearch.Probe probe;
    private final Window window;
    private final Precision precision;
    private final Variables guess;
    private final TreeMap<Double, Inner> inners = new TreeMap<>();
    private final Map<Double, Column> columns = new HashMap<>();
    /** The condensing variable found last: that of a neighbor. */
    private double condensing;

    /** @param guess of both variables, where to look first */
    BracketSearch(Loop loop, Window window, List<Attempt> tried, Precision precision, Variables guess) {
        this.guess = guess;
        this.condensing = guess.c();
        this.precision = precision;
        this.window = window;
        this.probe = new LevelSearch.Probe(loop, window, tried);
    }

    /** The two variables. */
    record Variables(double e, double c) {}

    /**
     * The condenser at one evaporating pressure: in balance, or why not, and on which side a balance could be.
     *
     * @param y the evaporating variable
     * @param trial in balance
     * @param reason why there is none
     * @param value positive where the evaporating pressure is too high, negative where it is too low
     */
    private record Inner(double y, Optional<Trial> trial, Optional<NoBalance> reason, double value) {
        static Inner of(double y, Trial trial) {
            return new Inner(y, Optional.of(trial), Optional.empty(), Column.bounded(trial.evaporatorShare()));
        }

        static Inner none(double y, NoBalance reason, double value) {
            return new Inner(y, Optional.empty(), Optional.of(reason), value);
        }
    }

    Levels solve() {
        if (liftless()) {
            return none(NoBalance.noLift());
        }
        // Where the compressor cannot run at the guess it may not run anywhere, and then the least lift tells at once.
        double from = column(guess.e()).at(guess.c()).refusal().isPresent() ? window.least() : guess.e();
        Bracket bracket = Bracket.around(e -> inner(e).value(), from, STRIDE, window.least(), window.mostEvaporating());
        Inner high = inner(bracket.lower());
        if (high.value() <= 0) {
            if (high.trial().isPresent() && !window.airLimits()) {
                return none(NoBalance.evaporatingAboveCritical());
            }
            return result(high);
        }
        Inner low = inner(bracket.upper());
        if (low.value() >= 0) {
            return none(low.reason().orElseGet(NoBalance::evaporatingBelowRange));
        }
        double y = Roots.brent(
                this::value,
                bracket.lower(),
                bracket.upper(),
                precision.tolerance,
                "evaporating pressure of a machine");
        Inner at = inner(y);
        boolean closed = at.trial().isPresent() && Math.abs(at.value()) <= precision.closed;
        return closed ? result(at) : none(nearestReason(y));
    }

    /** The value at an evaporating variable; zero as well where it is clear that a search would only close in on a jump. */
    private double value(double e) {
        double value = inner(e).value();
        return jump() ? 0 : value;
    }

    /** Whether a machine without balance lies beside one whose evaporator is far from its own. */
    private boolean jump() {
        Inner before = null;
        for (Inner inner : inners.values()) {
            if (before != null && before.value() > 0 && inner.value() <= 0) {
                double width = Column.STEEPEST * (inner.y() - before.y());
                return before.trial().isPresent() != inner.trial().isPresent()
                        && Math.abs(before.trial().isPresent() ? before.value() : inner.value()) > width;
            }
            before = inner;
        }
        return false;
    }

    /**
     * Whether the condenser is too large even where it condenses at the pressure at which the evaporator evaporates: with
     * more pressure it would be still larger than needed, so that there is no balance.
     */
    private boolean liftless() {
        double most =
                Math.min(window.mostEvaporating(), window.evaporatingVariable(window.condensingLimit() / LEAST_RATIO));
        if (!(most > window.least())
                || level(most).isEmpty()
                || level(window.least()).isEmpty()) {
            return false;
        }
        if (level(most).get().evaporatorShare() >= 1) {
            return false;
        }
        double y = level(window.least()).get().evaporatorShare() <= 1
                ? window.least()
                : Roots.brent(
                        e -> level(e).map(trial -> Column.bounded(trial.evaporatorShare()))
                                .orElse(-FAR),
                        window.least(),
                        most,
                        COARSE,
                        "evaporating pressure without lift");
        return level(y).filter(trial -> trial.condenserShare() < 1).isPresent();
    }

    /** The machine with next to no lift; empty where the compressor cannot run so. */
    private Optional<Trial> level(double e) {
        double condensing = LEAST_RATIO * window.evaporating(e);
        return condensing < window.highest()
                ? column(e).at(window.condensingVariable(condensing)).trial()
                : Optional.empty();
    }

    /** Where the search ends on a jump, what lies beside it says why. */
    private NoBalance nearestReason(double y) {
        if (inners.values().stream().allMatch(inner -> inner.reason().isEmpty())) {
            // Too steep to close in on: the ends of the window tell what the search ran into.
            inner(window.mostEvaporating());
            inner(window.least());
        }
        return inners.values().stream()
                .filter(inner -> inner.reason().isPresent())
                .min(Comparator.comparingDouble(inner -> Math.abs(inner.y() - y)))
                .flatMap(Inner::reason)
                .orElseThrow(() -> EngineException.of(ErrorCode.NOT_CONVERGED, "pressures of a machine"));
    }

    private Levels result(Inner inner) {
        return new Levels(inner.trial(), inner.reason(), probe.tried(), true);
    }

    private Levels none(NoBalance reason) {
        return new Levels(Optional.empty(), Optional.of(reason), probe.tried(), true);
    }

    private Column column(double e) {
        return columns.computeIfAbsent(e, y -> new Column(probe, y));
    }

    private Inner inner(double e) {
        Inner known = inners.get(e);
        if (known == null) {
            known = condenser(e);
            inners.put(e, known);
        }
        return known;
    }

    private Inner condenser(double e) {
        double least = Math.max(window.least(), window.condensingVariable(LEAST_RATIO * window.evaporating(e)));
        double most = window.mostCondensing();
        if (least >= most) {
            return Inner.none(e, NoBalance.noLift(), FAR);
        }
        Column column = column(e);
        Bracket bracket = Bracket.around(c -> column.at(c).value(), condensing, STRIDE, least, most);
        if (column.at(bracket.upper()).value() > 0) {
            return Inner.none(e, NoBalance.condensingAboveCritical(), FAR);
        }
        Column.Try lowest = column.at(bracket.lower());
        if (lowest.value() <= 0) {
            return cold(e, lowest, least);
        }
        double y = Roots.brent(
                column::value,
                bracket.lower(),
                bracket.upper(),
                precision.tolerance,
                "condensing pressure of a machine");
        condensing = y;
        Optional<Trial> trial = column.at(y).trial();
        if (trial.isPresent()
                && (column.sure() || Math.abs(Column.bounded(trial.get().condenserShare())) <= precision.closed)) {
            return Inner.of(e, trial.get());
        }
        if (column.refusal(y).isEmpty()) {
            column.at(most);
            column.at(least);
        }
        return column.refusal(y)
                .map(refusal -> Inner.none(e, NoBalance.compressor(refusal), -FAR))
                .orElseThrow(() -> EngineException.of(ErrorCode.NOT_CONVERGED, "condensing pressure of a machine"));
    }

    /** The condenser is large enough even at the lowest pressure. */
    private Inner cold(double e, Column.Try lowest, double least) {
        if (lowest.refusal().isPresent()) {
            return Inner.none(e, NoBalance.compressor(lowest.refusal().get()), -FAR);
        }
        return least > window.least()
                ? Inner.none(e, NoBalance.noLift(), FAR)
                : Inner.of(e, lowest.trial().orElseThrow());
    }
}
