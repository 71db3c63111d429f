package io.loopstate.engine.coexistence;

import io.loopstate.engine.coexistence.BoundarySolver.Condition;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.ChebyshevPieces;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * The edge of the two-phase region of a mixture, bubble and dew line in one, represented once from the converged solution of
 * its model.
 *
 * <p>Along the edge, temperature, pressure and the amounts in the incipient phase are smooth functions of s = ln(density of
 * the whole), also through the critical point, where both phases become one and a solver in double precision cannot go, and
 * through the highest temperature and pressure, where the edge turns back. They are kept as Chebyshev series in s.
 */
public final class PhaseBoundary {
    /** Half-widths of the series around the critical point that are tried, widest first. */
    private static final double[] CENTERS = {0.3, 0.15, 0.075, 0.0375};

    private static final double TOLERANCE = 1e-13;
    /** Furthest that solving for a point may move it. */
    private static final double SAME = 1e-3;

    private static final double CONVERGED = 1e-12;
    /** Share of the highest temperature from which on non-analytic terms slow the convergence of a series. */
    private static final double NEAR_TOP = 0.95;
    /** How far from the critical density the highest temperature and pressure are looked for, in s. */
    private static final double TOP_WITHIN = 0.9;

    private final Feed feed;
    private final BoundaryPoint critical;
    private final double minTemperature;
    private final BoundaryLine temperature;
    private final BoundaryLine pressure;
    private final ChebyshevPieces[] incipient;
    private final double oneLiquidAbove;
    /** Temperature above which the series are only close and every point is solved for. */
    private final double polishedAbove;

    /**
     * @param minTemperature K; the line ends above it where the model has two liquids
     * @throws io.loopstate.engine.error.EngineException NOT_CONVERGED where the mixture has no boundary of the usual form
     */
    public PhaseBoundary(Feed feed, double minTemperature) {
        this.feed = feed;
        BoundaryNodes bubbles = new BoundaryNodes(feed, true);
        BoundaryNodes dews = new BoundaryNodes(feed, false);
        this.minTemperature = Math.max(bubbles.downTo(minTemperature), dews.downTo(minTemperature));
        double thin = dews.atTemperature(this.minTemperature);
        bubbles.atTemperature(this.minTemperature);
        // so far that at every pressure of the dew line there is a bubble point too
        double dense = bubbles.downToPressure(dews.at(thin).pressure());
        BoundaryPoint near = bubbles.nearCritical();
        dews.nearCritical();
        critical = CriticalMixturePoint.near(
                feed, near.temperature(), Math.sqrt(near.density() * near.incipientDensity()));
        Fit fit = new Fit(bubbles, dews, Math.log(critical.density()), thin, dense);
        Center center = fit.center();
        double width = center.width();
        double from = Math.max(fit.middle - TOP_WITHIN, thin);
        double to = Math.min(fit.middle + TOP_WITHIN, dense);
        temperature = new BoundaryLine(fit.of(point -> Math.log(point.temperature()), width), from, to);
        pressure = new BoundaryLine(fit.of(point -> Math.log(point.pressure()), width), from, to);
        incipient = new ChebyshevPieces[feed.size()];
        for (int i = 0; i < incipient.length; i++) {
            int component = i;
            incipient[i] = fit.of(point -> Math.log(point.incipient()[component]), width);
        }
        polishedAbove = center.tail() > CONVERGED ? NEAR_TOP * Math.exp(temperature.top()) : Double.POSITIVE_INFINITY;
        oneLiquidAbove = SecondLiquid.highestTemperature(this);
    }

    /** The interval around the critical point, and how far its series is from convergence. */
    private record Center(double width, double tail) {}

    private record Fit(BoundaryNodes bubbles, BoundaryNodes dews, double middle, double thin, double dense) {
        private BoundaryPoint at(double s) {
            return (s > middle ? bubbles : dews).at(s);
        }

        ChebyshevPieces of(ToDoubleFunction<BoundaryPoint> value, double width) {
            DoubleUnaryOperator function = s -> value.applyAsDouble(at(s));
            return ChebyshevPieces.graded(function, middle - width, thin, width, TOLERANCE)
                    .then(ChebyshevPieces.single(function, middle - width, middle + width))
                    .then(ChebyshevPieces.graded(function, middle + width, dense, width, TOLERANCE));
        }

        /** The widest interval on which one series converges, else the one that comes nearest to it. */
        Center center() {
            double best = 0;
            double smallest = Double.POSITIVE_INFINITY;
            for (double width : CENTERS) {
                double tail = tail(width);
                if (tail < smallest) {
                    best = width;
                    smallest = tail;
                }
                if (tail <= CONVERGED) {
                    break;
                }
            }
            if (best == 0) {
                throw EngineException.of(ErrorCode.NOT_CONVERGED, "phase boundary near the critical point");
            }
            return new Center(best, smallest);
        }

        /** How far the series are from convergence; closest to the critical point the solver may fail. */
        private double tail(double width) {
            double largest = 0;
            for (int i = 0; i < bubbles.size(); i++) {
                int component = i;
                try {
                    largest = Math.max(
                            largest,
                            ChebyshevPieces.single(
                                            s -> Math.log(at(s).incipient()[component]), middle - width, middle + width)
                                    .firstTail());
                } catch (EngineException e) {
                    return Double.POSITIVE_INFINITY;
                }
            }
            return largest;
        }
    }

    /** The mixture. */
    public Feed feed() {
        return feed;
    }

    /** Where both phases are one. */
    public BoundaryPoint critical() {
        return critical;
    }

    /** Lowest temperature of the dew line, K; the bubble line goes on to the same pressure where it can be followed. */
    public double minTemperature() {
        return minTemperature;
    }

    /** Temperature (K) above which no second liquid was found between the lines; below it a liquid is to be checked. */
    public double oneLiquidAbove() {
        return oneLiquidAbove;
    }

    /** The cricondentherm: the point of the highest temperature. */
    public BoundaryPoint hottest() {
        return at(temperature.topPlace());
    }

    /** The cricondenbar: the point of the highest pressure. */
    public BoundaryPoint tightest() {
        return at(pressure.topPlace());
    }

    /** Lowest pressure at which there are both a bubble and a dew point, Pa. */
    public double minPressure() {
        return Math.exp(Math.max(pressure.lowest(true), pressure.lowest(false)));
    }

    /** The point at a temperature (K) below the highest: of the two, the denser or the thinner. */
    public BoundaryPoint atTemperature(double t, boolean denser) {
        double s = temperature.place(Math.log(t), denser);
        return polished(Condition.TEMPERATURE, t, point(t, Math.exp(pressure.at(s)), s));
    }

    /** The point at a pressure (Pa) below the highest: of the two, the denser, colder one or the thinner, hotter one. */
    public BoundaryPoint atPressure(double p, boolean denser) {
        double s = pressure.place(Math.log(p), denser);
        return polished(Condition.PRESSURE, p, point(Math.exp(temperature.at(s)), p, s));
    }

    /** The converged point, or the one given where it is too close to the critical point. */
    private BoundaryPoint polished(Condition condition, double value, BoundaryPoint point) {
        return point.temperature() < polishedAbove
                ? point
                : BoundarySolver.solve(feed, condition, value, point)
                        .filter(p -> Math.abs(p.density() / point.density() - 1) < SAME)
                        .orElse(point);
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
