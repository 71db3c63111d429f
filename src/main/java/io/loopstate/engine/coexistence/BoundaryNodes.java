package io.loopstate.engine.coexistence;

import io.loopstate.engine.coexistence.BoundarySolver.Condition;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Converged points of one branch of the phase boundary, bubble or dew, over the logarithm of the density of the whole. Each
 * starts from its neighbors that were solved before.
 */
final class BoundaryNodes {
    /** Where the branch is entered, as a share of the reducing temperature; any of these will do. */
    private static final double[] ENTRIES = {0.75, 0.8, 0.7, 0.85, 0.65, 0.9};

    private static final double COOLING = 0.96;
    private static final double LARGEST_DENSITY_STEP = 0.5;
    private static final double LARGEST_TEMPERATURE_STEP = 0.04;
    /** Distance kept from the temperature at which the liquid splits in two, as a ratio. */
    private static final double ABOVE_SECOND_LIQUID = 1.02;

    private static final double SMALLEST_STEP = 1e-5;
    /** ln of the ratio of densities at which the critical point is near enough to be solved for. */
    private static final double NEAR_CRITICAL = 0.7;

    private final Feed feed;
    private final boolean bubble;
    private final TreeMap<Double, BoundaryPoint> solved = new TreeMap<>();

    BoundaryNodes(Feed feed, boolean bubble) {
        this.feed = feed;
        this.bubble = bubble;
        double tr = feed.merged().reducingTemperature();
        for (double entry : ENTRIES) {
            Optional<BoundaryPoint> point = BoundaryStart.atTemperature(feed, entry * tr, bubble);
            if (point.isPresent() && point.get().bubble() == bubble) {
                keep(point.get());
                return;
            }
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, "first point of the phase boundary of the mixture");
    }

    /** The known point in which both phases are most alike. */
    BoundaryPoint nearestCritical() {
        return (bubble ? solved.firstEntry() : solved.lastEntry()).getValue();
    }

    /** Takes a converged point of the branch. */
    void keep(BoundaryPoint point) {
        solved.put(Math.log(point.density()), point);
    }

    /**
     * Follows the branch down to a temperature (K), or to a little above where it cannot be followed any further: there the
     * model has two liquids.
     *
     * @return the lowest temperature reached
     */
    double downTo(double temperature) {
        BoundaryPoint coldest =
                bubble ? solved.lastEntry().getValue() : solved.firstEntry().getValue();
        double t = coldest.temperature();
        double factor = COOLING;
        while (t > temperature) {
            double next = Math.max(t * factor, temperature);
            Optional<BoundaryPoint> point =
                    BoundarySolver.solve(feed, Condition.TEMPERATURE, next, colder(coldest, next));
            if (point.isPresent() && plausible(point.get())) {
                coldest = point.get();
                keep(coldest);
                t = next;
                factor = Math.max(COOLING, factor * factor);
            } else {
                factor = Math.sqrt(factor);
                if (1 - factor < SMALLEST_STEP) {
                    return t * ABOVE_SECOND_LIQUID;
                }
            }
        }
        return t;
    }

    /**
     * Follows the bubble line on down to a pressure (Pa), or as far as it can be followed.
     *
     * @return ln of the density there
     */
    double downToPressure(double pressure) {
        double factor = COOLING;
        BoundaryPoint coldest = solved.lastEntry().getValue();
        while (coldest.pressure() > pressure && factor < 1 - SMALLEST_STEP) {
            double next = coldest.temperature() * factor;
            Optional<BoundaryPoint> point =
                    BoundarySolver.solve(feed, Condition.TEMPERATURE, next, colder(coldest, next));
            if (point.isPresent() && plausible(point.get())) {
                coldest = point.get();
                keep(coldest);
            } else {
                factor = Math.sqrt(factor);
            }
        }
        return solved.lastKey();
    }

    /** ln of the density of the whole at a temperature (K) above the lowest one reached. */
    double atTemperature(double temperature) {
        BoundaryPoint start = solved.values().stream()
                .min(Comparator.comparing(point -> Math.abs(point.temperature() - temperature)))
                .orElseThrow();
        BoundaryPoint point = BoundarySolver.solve(feed, Condition.TEMPERATURE, temperature, start)
                .filter(this::plausible)
                .orElseThrow(() -> notConverged(temperature));
        keep(point);
        return Math.log(point.density());
    }

    /** From the last two points, ln of each amount taken as linear in 1/T. */
    private BoundaryPoint colder(BoundaryPoint coldest, double t) {
        if (solved.size() < 2) {
            return coldest;
        }
        BoundaryPoint before = bubble
                ? solved.lowerEntry(solved.lastKey()).getValue()
                : solved.higherEntry(solved.firstKey()).getValue();
        double share = (1 / t - 1 / before.temperature()) / (1 / coldest.temperature() - 1 / before.temperature());
        return between(before, coldest, share);
    }

    /** Follows the branch to where both phases are nearly as dense and returns that point. */
    BoundaryPoint nearCritical() {
        while (true) {
            BoundaryPoint last = nearestCritical();
            double ratio = Math.abs(Math.log(last.density() / last.incipientDensity()));
            if (ratio < NEAR_CRITICAL) {
                return last;
            }
            // the density of the other phase moves about as far
            double step = Math.min(0.15 * ratio, LARGEST_DENSITY_STEP);
            at(Math.log(last.density()) + (bubble ? -step : step));
        }
    }

    /** The point at ln of a density of the whole, reached by steps from the nearest one known. */
    BoundaryPoint at(double s) {
        BoundaryPoint known = solved.get(s);
        double step = 1;
        while (known == null) {
            double from = nearest(s);
            double largest = step * (bubble ? LARGEST_TEMPERATURE_STEP : LARGEST_DENSITY_STEP);
            double next = Math.abs(s - from) <= largest ? s : from + Math.copySign(largest, s - from);
            Optional<BoundaryPoint> point =
                    BoundarySolver.solve(feed, Condition.DENSITY, Math.exp(next), predicted(from, next));
            if (point.isPresent() && plausible(point.get())) {
                solved.put(next, point.get());
                known = next == s ? point.get() : null;
            } else {
                step *= 0.5;
                if (step < SMALLEST_STEP) {
                    throw notConverged(solved.get(from).temperature());
                }
            }
        }
        return known;
    }

    private boolean plausible(BoundaryPoint point) {
        return point.bubble() == bubble && point.temperature() > 0;
    }

    private double nearest(double s) {
        Double below = solved.floorKey(s);
        Double above = solved.ceilingKey(s);
        if (below == null || above == null) {
            return below == null ? above : below;
        }
        return s - below < above - s ? below : above;
    }

    /** From the nearest point and another one not too close to it, on a line in the logarithms. */
    private BoundaryPoint predicted(double from, double s) {
        BoundaryPoint near = solved.get(from);
        double back = from - 0.5 * (s - from);
        Map.Entry<Double, BoundaryPoint> ahead = s > from ? solved.ceilingEntry(s) : solved.floorEntry(s);
        Map.Entry<Double, BoundaryPoint> behind = s > from ? solved.floorEntry(back) : solved.ceilingEntry(back);
        Map.Entry<Double, BoundaryPoint> other = ahead != null ? ahead : behind;
        return other == null ? near : between(near, other.getValue(), (s - from) / (other.getKey() - from));
    }

    private static BoundaryPoint between(BoundaryPoint a, BoundaryPoint b, double share) {
        double[] incipient = new double[a.incipient().length];
        for (int i = 0; i < incipient.length; i++) {
            incipient[i] = mix(a.incipient()[i], b.incipient()[i], share);
        }
        return new BoundaryPoint(
                mix(a.temperature(), b.temperature(), share),
                mix(a.pressure(), b.pressure(), share),
                mix(a.density(), b.density(), share),
                incipient);
    }

    private static double mix(double a, double b, double share) {
        return a * Math.pow(b / a, share);
    }

    private static EngineException notConverged(double t) {
        return EngineException.of(ErrorCode.NOT_CONVERGED, "phase boundary of the mixture at " + t + " K");
    }
}
