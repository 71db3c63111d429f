package io.loopstate.engine.coexistence;

import io.loopstate.engine.coexistence.BoundarySolver.Condition;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.numerics.ChebyshevPieces;

/**
 * The edge of the two-phase region of a mixture, bubble and dew line in one, represented once from the converged solution of
 * its model.
 *
 * <p>Along the edge, temperature, pressure and the amounts in the incipient phase are smooth functions of s = ln(density of
 * the whole), also through the critical point, where both phases become one and a solver in double precision cannot go, and
 * through the highest temperature and pressure, where the edge turns back. They are kept as Chebyshev series in s.
 */
public final class PhaseBoundary {
    /** How far, in ln p, the lines may lead past the critical point; ten times what they do where they meet in it. */
    private static final double MEETING = 1e-6;
    /** Furthest that solving for a point may move it. */
    private static final double SAME = 1e-3;

    /** Share of the highest temperature from which on non-analytic terms slow the convergence of a series. */
    private static final double NEAR_TOP = 0.95;
    /** How close, as a share of the critical temperature, rounding may make a sound phase look unstable. */
    private static final double EDGE_OF_STABILITY = 1e-3;

    private static final int SOUNDINGS = 64;
    /** Keeps the rounding of a place on the series off a gap. */
    private static final double WITHIN = 1 - 1e-6;

    private final Feed feed;
    private final BoundaryMiddle middle;
    private final double minTemperature;
    private final BoundaryLine temperature;
    private final BoundaryLine pressure;
    private final ChebyshevPieces[] incipient;
    private final double oneLiquidAbove;
    private final boolean soundEverywhere;
    /** Temperature above which the series are only close and every point is solved for. */
    private final double polishedAbove;

    /**
     * @param minTemperature K; the line ends above it where the model has two liquids
     * @throws EngineException NOT_CONVERGED where the mixture has no boundary of the usual form
     */
    public PhaseBoundary(Feed feed, double minTemperature) {
        this.feed = feed;
        BoundaryBranches branches = BoundaryBranches.from(feed, minTemperature);
        this.minTemperature = branches.minTemperature();
        middle = BoundaryMiddle.of(branches);
        temperature = middle.line(point -> Math.log(point.temperature()));
        pressure = middle.line(point -> Math.log(point.pressure()));
        requireMeeting();
        incipient = new ChebyshevPieces[feed.size()];
        for (int i = 0; i < incipient.length; i++) {
            int component = i;
            incipient[i] = middle.pieces(point -> Math.log(point.incipient()[component]));
        }
        polishedAbove = middle.converged() ? Double.POSITIVE_INFINITY : NEAR_TOP * Math.exp(temperature.top());
        oneLiquidAbove = SecondLiquid.highestTemperature(this);
        soundEverywhere = soundWhereLookedAt();
    }

    /** A mixture with water may have a critical point off its lines, which then end in none or in another. */
    private void requireMeeting() {
        double past = pressure.at(Math.log(critical().density()))
                - Math.log(critical().pressure());
        if (middle.ends().isEmpty() && !(Math.abs(past) <= MEETING)) {
            throw EngineException.of(ErrorCode.NOT_CONVERGED, "the lines lead past the critical point");
        }
    }

    /** The mixture. */
    public Feed feed() {
        return feed;
    }

    /** Where both phases are one. */
    public BoundaryPoint critical() {
        return middle.critical();
    }

    /** Lowest temperature of the dew line, K; the bubble line goes on to the same pressure where it can be followed. */
    public double minTemperature() {
        return minTemperature;
    }

    /** Temperature (K) above which no second liquid was found between the lines; below it a liquid is to be checked. */
    public double oneLiquidAbove() {
        return oneLiquidAbove;
    }

    /** Highest temperature (K) at which the boundary is known: that of {@link #hottest} unless a false phase lies before it. */
    public double maxTemperature() {
        return middle.ends()
                .map(ends -> ends.bubble().temperature() * WITHIN)
                .orElseGet(() -> hottest().temperature());
    }

    /** The cricondentherm: the point of the highest temperature; the critical point where a false phase hides it. */
    public BoundaryPoint hottest() {
        return middle.ends().isPresent() ? critical() : at(temperature.topPlace());
    }

    /** The cricondenbar: the point of the highest pressure; the critical point where a false phase hides it. */
    public BoundaryPoint tightest() {
        return middle.ends().isPresent() ? critical() : at(pressure.topPlace());
    }

    /** Lowest pressure at which there are both a bubble and a dew point, Pa. */
    public double minPressure() {
        return Math.exp(Math.max(pressure.lowest(true), pressure.lowest(false)));
    }

    /** The point at a temperature (K) below the highest: of the two, the denser or the thinner. */
    public BoundaryPoint atTemperature(double t, boolean denser) {
        middle.ends()
                .ifPresent(ends -> requireKnown(
                        Variable.TEMPERATURE, t, minTemperature, ends.bubble().temperature()));
        double s = temperature.place(Math.log(t), denser);
        return polished(Condition.TEMPERATURE, t, point(t, Math.exp(pressure.at(s)), s));
    }

    /** The point at a pressure (Pa) below the highest: of the two, the denser, colder one or the thinner, hotter one. */
    public BoundaryPoint atPressure(double p, boolean denser) {
        middle.ends()
                .map(ends -> denser ? ends.bubble() : ends.dew())
                .ifPresent(end -> requireKnown(Variable.PRESSURE, p, minPressure(), end.pressure()));
        double s = pressure.place(Math.log(p), denser);
        return polished(Condition.PRESSURE, p, point(Math.exp(temperature.at(s)), p, s));
    }

    /** Refuses what lies in the gap at a false phase. */
    private static void requireKnown(Variable variable, double got, double lower, double end) {
        double upper = end * WITHIN;
        if (got > upper) {
            throw EngineException.notComputed(
                    "between here and its critical point the model of this mixture has a false phase",
                    variable,
                    got,
                    lower,
                    upper);
        }
    }

    /** The converged point, or the one given where it is too close to the critical point. */
    private BoundaryPoint polished(Condition condition, double value, BoundaryPoint point) {
        return point.temperature() < polishedAbove
                ? point
                : BoundarySolver.solve(feed, condition, value, point)
                        .filter(p -> Math.abs(p.density() / point.density() - 1) < SAME)
                        .orElse(point);
    }

    /**
     * Refuses a point whose incipient phase is a false one, on a loop of the equation of state; close to the critical point, where a
     * sound phase is at the edge of stability, it is not asked.
     *
     * @throws EngineException OUT_OF_RANGE
     */
    public void requireSound(BoundaryPoint point) {
        if (!soundEverywhere && !sound(point)) {
            throw EngineException.notComputed("the model of this mixture has a false phase here in place of a liquid");
        }
    }

    private boolean sound(BoundaryPoint point) {
        double t = point.temperature();
        return Math.abs(t / critical().temperature() - 1) < EDGE_OF_STABILITY
                || feed.phase(t, point.incipient()).locallyStable();
    }

    /** Looked at once in many places, so that points of a sound boundary, as all of the catalog are, cost no more. */
    private boolean soundWhereLookedAt() {
        double highest = Math.min(critical().temperature(), maxTemperature());
        try {
            for (int k = 0; k < SOUNDINGS; k++) {
                double t = minTemperature + (highest - minTemperature) * k / SOUNDINGS;
                if (!sound(atTemperature(t, true)) || !sound(atTemperature(t, false))) {
                    return false;
                }
            }
            return true;
        } catch (EngineException turnsBack) {
            return false;
        }
    }

    private BoundaryPoint at(double s) {
        return point(Math.exp(temperature.at(s)), Math.exp(pressure.at(s)), s);
    }

    private BoundaryPoint point(double t, double p, double s) {
        double[] amounts = new double[incipient.length];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = Math.exp(incipient[i].at(s));
        }
        return new BoundaryPoint(t, p, Math.exp(s), amounts);
    }
}
