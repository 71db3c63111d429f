package io.loopstate.engine.numerics;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/** Roots of functions of one variable inside a bracket. Every method ends: in a root or in an error with its name. */
public final class Roots {
    private static final int MAX_ITERATIONS = 120;
    /** Steps this small that no longer shrink are rounding errors of the function. */
    private static final double ROUNDING = 1e-11;

    private Roots() {}

    /** A function value and its slope. */
    public record ValueSlope(double value, double slope) {}

    /**
     * Newton's method kept inside a bracket by bisection, for a function that changes sign between the ends.
     *
     * @param tolerance of the last step, relative to the root
     * @param name of the iteration, for the error
     */
    public static double newton(
            DoubleFunction<ValueSlope> function,
            double lower,
            double upper,
            double start,
            double tolerance,
            boolean increasing,
            String name) {
        double lo = lower;
        double hi = upper;
        double x = Math.min(Math.max(start, lo), hi);
        double previous = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            ValueSlope f = function.apply(x);
            if (f.value() == 0) {
                Iteration.BRACKET.converged(k + 1);
                return x;
            }
            if (f.value() < 0 == increasing) {
                lo = x;
            } else {
                hi = x;
            }
            double next = x - f.value() / f.slope();
            double step = Math.abs(next - x);
            boolean slow = step > 0.5 * previous;
            if (step <= tolerance * Math.abs(x) || slow && step <= ROUNDING * Math.abs(x)) {
                Iteration.BRACKET.converged(k + 1);
                return Math.min(Math.max(next, lower), upper);
            }
            previous = step;
            if (!(next > lo && next < hi) || slow) {
                next = 0.5 * (lo + hi);
            }
            x = next;
            if (hi - lo <= Math.ulp(x)) {
                Iteration.BRACKET.converged(k + 1);
                return x;
            }
        }
        Iteration.BRACKET.gaveUp(MAX_ITERATIONS);
        throw EngineException.of(ErrorCode.NOT_CONVERGED, name);
    }

    /**
     * Root of a function that changes sign between the ends, without derivatives: Brent (1973), chapter 4.
     *
     * @param tolerance relative to the root
     * @param name of the iteration, for the error
     */
    public static double brent(
            DoubleUnaryOperator function, double lower, double upper, double tolerance, String name) {
        double a = lower;
        double b = upper;
        double fa = function.applyAsDouble(a);
        double fb = function.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fa > 0 == fb > 0 && fb != 0) {
            throw EngineException.of(ErrorCode.NOT_CONVERGED, name + " (no change of sign)");
        }
        double c = a;
        double fc = fa;
        double d = b - a;
        double e = d;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            if (Math.abs(fc) < Math.abs(fb)) {
                a = b;
                b = c;
                c = a;
                fa = fb;
                fb = fc;
                fc = fa;
            }
            double width = 2 * Math.ulp(b) + 0.5 * tolerance * Math.abs(b);
            double m = 0.5 * (c - b);
            if (Math.abs(m) <= width || fb == 0) {
                Iteration.BRACKET.converged(k + 1);
                return b;
            }
            if (Math.abs(e) < width || Math.abs(fa) <= Math.abs(fb)) {
                d = m;
                e = m;
            } else {
                double s = fb / fa;
                double p;
                double q;
                if (a == c) {
                    p = 2 * m * s;
                    q = 1 - s;
                } else {
                    double r = fb / fc;
                    double t = fa / fc;
                    p = s * (2 * m * t * (t - r) - (b - a) * (r - 1));
                    q = (t - 1) * (r - 1) * (s - 1);
                }
                if (p > 0) {
                    q = -q;
                } else {
                    p = -p;
                }
                if (2 * p < Math.min(3 * m * q - Math.abs(width * q), Math.abs(e * q))) {
                    e = d;
                    d = p / q;
                } else {
                    d = m;
                    e = m;
                }
            }
            a = b;
            fa = fb;
            b += Math.abs(d) > width ? d : Math.copySign(width, m);
            fb = function.applyAsDouble(b);
            if (fb > 0 == fc > 0) {
                c = a;
                fc = fa;
                d = b - a;
                e = d;
            }
        }
        Iteration.BRACKET.gaveUp(MAX_ITERATIONS);
        throw EngineException.of(ErrorCode.NOT_CONVERGED, name);
    }
}
