package io.loopstate.engine.balance;

import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.error.EngineException;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The condensing pressures that were tried at one evaporating pressure, by their variables; each once. */
final class Column {
    /** Value of a share that is none: stands for infinity. */
    static final double FAR = 50;
    /** The logarithm of a share changes by less for each unit of a variable, other than on a jump. */
    static final double STEEPEST = 100;

    /** Width of a jump, some millikelvin, at which it does not matter what lies inside. */
    private static final double NARROW = 1e-4;

    private final LevelSearch.Probe probe;
    private final double evaporating;
    private final TreeMap<Double, Try> tries = new TreeMap<>();

    Column(LevelSearch.Probe probe, double evaporating) {
        this.probe = probe;
        this.evaporating = evaporating;
    }

    /** One condensing pressure: the share, or why the compressor cannot run. */
    record Try(double y, Optional<Trial> trial, Optional<EngineException> refusal) {
        /** A compressor that cannot run moves nothing. */
        double value() {
            return trial.map(t -> bounded(t.condenserShare())).orElse(-FAR);
        }
    }

    static double bounded(double share) {
        return Math.max(-FAR, Math.min(FAR, Math.log(share)));
    }

    Try at(double condensing) {
        Try known = tries.get(condensing);
        if (known != null) {
            return known;
        }
        Try result;
        try {
            result = new Try(condensing, Optional.of(probe.at(evaporating, condensing)), Optional.empty());
        } catch (EngineException exception) {
            result = new Try(condensing, Optional.empty(), Optional.of(exception));
        }
        tries.put(condensing, result);
        return result;
    }

    /** The value at a variable; zero as well where it is clear that a search would only close in on a jump. */
    double value(double condensing) {
        double value = at(condensing).value();
        return jump() || sure() ? 0 : value;
    }

    /** Whether the evaporator is too large, or too small, on both sides of the balance of the condenser and clearly so. */
    boolean sure() {
        Try before = null;
        for (Try there : tries.values()) {
            if (before != null && before.value() > 0 && there.value() <= 0) {
                return before.trial().isPresent()
                        && there.trial().isPresent()
                        && far(
                                bounded(before.trial().get().evaporatorShare()),
                                bounded(there.trial().get().evaporatorShare()));
            }
            before = there;
        }
        return false;
    }

    private static boolean far(double one, double other) {
        return one > 0 == other > 0 && Math.min(Math.abs(one), Math.abs(other)) > Math.abs(one - other);
    }

    /** Whether the condenser is too small up to where the compressor no longer runs. */
    private boolean jump() {
        double upper = Double.NaN;
        for (Map.Entry<Double, Try> entry : tries.descendingMap().entrySet()) {
            Try there = entry.getValue();
            if (there.refusal().isPresent()) {
                upper = entry.getKey();
            } else {
                double width = upper - entry.getKey();
                return width < NARROW || there.value() < FAR && there.value() > STEEPEST * width;
            }
        }
        return false;
    }

    /** Why the compressor cannot run closest to a variable. */
    Optional<EngineException> refusal(double condensing) {
        return tries.values().stream()
                .filter(attempt -> attempt.refusal().isPresent())
                .min(Comparator.comparingDouble(attempt -> Math.abs(attempt.y() - condensing)))
                .flatMap(Try::refusal);
    }
}
