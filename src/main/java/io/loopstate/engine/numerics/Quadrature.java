package io.loopstate.engine.numerics;

import java.util.function.DoubleUnaryOperator;

/** Integrals, halved where they have not converged: eight points of Gauss and Legendre in each part. */
public final class Quadrature {
    private static final int MOST_HALVINGS = 40;

    /** Positive nodes: M. Abramowitz, I. A. Stegun (1964), table 25.4. */
    private static final double[] NODES = {
        0.183434642495649804939476, 0.525532409916328985817739, 0.796666477413626739591554, 0.960289856497536231683561
    };
    /** Their weights. */
    private static final double[] WEIGHTS = {
        0.362683783378361982965150, 0.313706645877887287337962, 0.222381034453374470544356, 0.101228536290376259152531
    };

    private final DoubleUnaryOperator function;
    private final double tolerance;

    private Quadrature(DoubleUnaryOperator function, double tolerance) {
        this.function = function;
        this.tolerance = tolerance;
    }

    /**
     * An integral.
     *
     * @param value infinite where the function is infinite or no number at a point looked at, or where halving does not end,
     *     as at a pole
     * @param parts into which it was divided
     */
    public record Integral(double value, int parts) {
        private static final Integral UNBOUNDED = new Integral(Double.POSITIVE_INFINITY, 0);

        private Integral plus(Integral other) {
            return new Integral(value + other.value, parts + other.parts);
        }
    }

    /**
     * The integral of a positive function.
     *
     * @param from lower end
     * @param to upper end, not below the lower one
     * @param relative accuracy of each part, relative to the first estimate of the whole
     */
    public static Integral of(DoubleUnaryOperator function, double from, double to, double relative) {
        double whole = gauss(function, from, to);
        return from == to
                ? new Integral(0, 0)
                : new Quadrature(function, relative * whole).over(from, to, whole, MOST_HALVINGS);
    }

    private Integral over(double from, double to, double whole, int halvings) {
        double middle = 0.5 * (from + to);
        double left = gauss(function, from, middle);
        double right = gauss(function, middle, to);
        double both = left + right;
        if (!Double.isFinite(whole) || !Double.isFinite(both) || !(to > from)) {
            return Integral.UNBOUNDED;
        }
        if (Math.abs(both - whole) <= tolerance) {
            return new Integral(both, 2);
        }
        return halvings == 0
                ? Integral.UNBOUNDED
                : over(from, middle, left, halvings - 1).plus(over(middle, to, right, halvings - 1));
    }

    private static double gauss(DoubleUnaryOperator function, double from, double to) {
        double center = 0.5 * (from + to);
        double half = 0.5 * (to - from);
        double sum = 0;
        for (int i = 0; i < NODES.length; i++) {
            sum += WEIGHTS[i]
                    * (function.applyAsDouble(center - half * NODES[i])
                            + function.applyAsDouble(center + half * NODES[i]));
        }
        return half * sum;
    }
}
