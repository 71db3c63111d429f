package io.loopstate.engine.numerics;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.function.DoubleUnaryOperator;

/** The least value of a function of one variable that falls, then rises. */
public final class Minimum {
    private static final int MAX_ITERATIONS = 100;
    private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;

    private Minimum() {}

    /**
     * Where the function is least, by parabolas through three points and golden sections where they do not help. Source: R. P.
     * Brent, Algorithms for Minimization without Derivatives (1973), chapter 5 (from memory).
     *
     * @param tolerance of the place; below the root of the function's rounding errors it only costs time
     * @param name of the iteration, for the error
     */
    public static double brent(
            DoubleUnaryOperator function, double lower, double upper, double tolerance, String name) {
        double a = lower;
        double b = upper;
        double x = a + GOLDEN * (b - a);
        double w = x;
        double v = x;
        double fx = function.applyAsDouble(x);
        double fw = fx;
        double fv = fx;
        double step = 0;
        double before = 0;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            double middle = (a + b) / 2;
            if (Math.abs(x - middle) <= 2 * tolerance - (b - a) / 2) {
                return x;
            }
            double parabola = parabola(x, w, v, fx, fw, fv);
            boolean fits = Math.abs(before) > tolerance
                    && Math.abs(parabola) < Math.abs(before) / 2
                    && x + parabola > a
                    && x + parabola < b;
            before = fits ? step : (x < middle ? b : a) - x;
            step = fits ? parabola : GOLDEN * before;
            if (fits && (x + step - a < 2 * tolerance || b - x - step < 2 * tolerance)) {
                step = Math.copySign(tolerance, middle - x);
            }
            double u = x + (Math.abs(step) >= tolerance ? step : Math.copySign(tolerance, step));
            double fu = function.applyAsDouble(u);
            if (fu <= fx) {
                a = u < x ? a : x;
                b = u < x ? x : b;
                v = w;
                fv = fw;
                w = x;
                fw = fx;
                x = u;
                fx = fu;
            } else {
                a = u < x ? u : a;
                b = u < x ? b : u;
                if (fu <= fw || w == x) {
                    v = w;
                    fv = fw;
                    w = u;
                    fw = fu;
                } else if (fu <= fv || v == x || v == w) {
                    v = u;
                    fv = fu;
                }
            }
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, name);
    }

    /** From x to the vertex of the parabola through three points; NaN or infinite where there is none. */
    private static double parabola(double x, double w, double v, double fx, double fw, double fv) {
        double r = (x - w) * (fx - fv);
        double q = (x - v) * (fx - fw);
        return -((x - v) * q - (x - w) * r) / (2 * (q - r));
    }
}
