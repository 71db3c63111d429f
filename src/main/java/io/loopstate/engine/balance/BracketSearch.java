package io.loopstate.engine.balance;

import io.loopstate.engine.balance.Levels.Attempt;
import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Roots;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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
    /** Value of a share that is none: stands for infinity. */
    private static final double FAR = 50;
    /** Least ratio of the pressures that is tried. */
    static final double LEAST_RATIO = 1 + 1e-4;

    private final LevelSearch.Probe probe;
    private final Window window;
    private final Precision precision;
    private final List<Inner> inners = new ArrayList<>();

    BracketSearch(Loop loop, Window window, List<Attempt> tried, Precision precision) {
        this.precision = precision;
        this.window = window;
        this.probe = new LevelSearch.Probe(loop, window, tried);
    }

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
            return new Inner(y, Optional.of(trial), Optional.empty(), bounded(trial.evaporatorShare()));
        }

        static Inner none(double y, NoBalance reason, double value) {
            return new Inner(y, Optional.empty(), Optional.of(reason), value);
        }
    }

    /** One condensing pressure: the share, or why the compressor cannot run. */
    private record Try(double y, Optional<Trial> trial, Optional<EngineException> refusal) {
        /** A compressor that cannot run moves nothing. */
        double value() {
            return trial.map(t -> bounded(t.condenserShare())).orElse(-FAR);
        }
    }

    private static double bounded(double share) {
        return Math.max(-FAR, Math.min(FAR, Math.log(share)));
    }

    Levels solve() {
        if (liftless()) {
            return none(NoBalance.noLift());
        }
        Inner high = inner(window.least());
        if (high.value() <= 0) {
            if (high.trial().isPresent() && !window.airLimits()) {
                return none(NoBalance.evaporatingAboveCritical());
            }
            return result(high);
        }
        Inner low = inner(window.mostEvaporating());
        if (low.value() >= 0) {
            return none(low.reason().orElseGet(NoBalance::evaporatingBelowRange));
        }
        double y = Roots.brent(
                e -> inner(e).value(),
                window.least(),
                window.mostEvaporating(),
                precision.tolerance,
                "evaporating pressure of a machine");
        Inner at = inner(y);
        boolean closed = at.trial().isPresent() && Math.abs(at.value()) <= precision.closed;
        return closed ? result(at) : none(nearestReason(y));
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
                        e -> level(e).map(trial -> bounded(trial.evaporatorShare()))
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
                ? attempt(e, window.condensingVariable(condensing), new ArrayList<>())
                        .trial()
                : Optional.empty();
    }

    /** Where the search ends on a jump, what lies beside it says why. */
    private NoBalance nearestReason(double y) {
        return inners.stream()
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

    private Inner inner(double e) {
        Inner inner = condenser(e);
        inners.add(inner);
        return inner;
    }

    private Inner condenser(double e) {
        double least = Math.max(window.least(), window.condensingVariable(LEAST_RATIO * window.evaporating(e)));
        double most = window.mostCondensing();
        if (least >= most) {
            return Inner.none(e, NoBalance.noLift(), FAR);
        }
        List<Try> tries = new ArrayList<>();
        if (attempt(e, most, tries).value() > 0) {
            return Inner.none(e, NoBalance.condensingAboveCritical(), FAR);
        }
        Try lowest = attempt(e, least, tries);
        if (lowest.value() <= 0) {
            return cold(e, lowest, least);
        }
        double y = Roots.brent(
                c -> attempt(e, c, tries).value(),
                least,
                most,
                precision.tolerance,
                "condensing pressure of a machine");
        Optional<Trial> trial = attempt(e, y, tries).trial();
        if (trial.isPresent() && Math.abs(bounded(trial.get().condenserShare())) <= precision.closed) {
            return Inner.of(e, trial.get());
        }
        return refused(e, y, tries);
    }

    /** The condenser is large enough even at the lowest pressure. */
    private Inner cold(double e, Try lowest, double least) {
        if (lowest.refusal().isPresent()) {
            return Inner.none(e, NoBalance.compressor(lowest.refusal().get()), -FAR);
        }
        return least > window.least()
                ? Inner.none(e, NoBalance.noLift(), FAR)
                : Inner.of(e, lowest.trial().orElseThrow());
    }

    private static Inner refused(double e, double y, List<Try> tries) {
        return tries.stream()
                .filter(attempt -> attempt.refusal().isPresent())
                .min(Comparator.comparingDouble(attempt -> Math.abs(attempt.y() - y)))
                .flatMap(Try::refusal)
                .map(refusal -> Inner.none(e, NoBalance.compressor(refusal), -FAR))
                .orElseThrow(() -> EngineException.of(ErrorCode.NOT_CONVERGED, "condensing pressure of a machine"));
    }

    private Try attempt(double e, double c, List<Try> tries) {
        Try result;
        try {
            result = new Try(c, Optional.of(probe.at(e, c)), Optional.empty());
        } catch (EngineException exception) {
            result = new Try(c, Optional.empty(), Optional.of(exception));
        }
        tries.add(result);
        return result;
    }
}
