package io.loopstate.engine.coexistence;

import io.loopstate.engine.numerics.ChebyshevPieces;
import io.loopstate.engine.numerics.Roots;
import java.util.function.DoubleUnaryOperator;

/**
 * Temperature or pressure along the phase boundary, a function of s = ln(density) with one maximum, and its inverse on both
 * sides of it.
 *
 * <p>With x = sqrt(top - value), taken positive on the dense side, s is a smooth function of x across the maximum, so that
 * the inverse is a Chebyshev series like the function itself.
 */
final class BoundaryLine {
    private static final double TOLERANCE = 1e-13;
    private static final double FIRST_WIDTH = 0.05;
    private static final double ROOT = 1e-15;

    private final ChebyshevPieces values;
    private final ChebyshevPieces slopes;
    private final ChebyshevPieces inverse;
    private final double topPlace;
    private final double top;

    private BoundaryLine(ChebyshevPieces values, ChebyshevPieces slopes, double topPlace, double top, double[] ends) {
        this.values = values;
        this.slopes = slopes;
        this.topPlace = topPlace;
        this.top = top;
        DoubleUnaryOperator place = this::search;
        double dense = Math.sqrt(top - values.at(values.to()));
        double thin = Math.sqrt(top - values.at(values.from()));
        if (ends.length == 0) {
            double near = Math.min(FIRST_WIDTH, Math.min(dense, thin));
            inverse = ChebyshevPieces.graded(place, -near, -thin, near, TOLERANCE)
                    .then(ChebyshevPieces.fit(place, -near, near, TOLERANCE))
                    .then(ChebyshevPieces.graded(place, near, dense, near, TOLERANCE));
        } else {
            double a = Math.sqrt(top - values.at(ends[0]));
            double b = Math.sqrt(top - values.at(ends[1]));
            inverse = ChebyshevPieces.graded(place, -a, -thin, FIRST_WIDTH, TOLERANCE)
                    .then(ChebyshevPieces.single(x -> ends[0] + (ends[1] - ends[0]) * (x + a) / (a + b), -a, b))
                    .then(ChebyshevPieces.graded(place, b, dense, FIRST_WIDTH, TOLERANCE));
        }
    }

    /**
     * A line through its highest point.
     *
     * @param values of ln T or ln p over s
     * @param low an s on the thin side of the maximum
     * @param high an s on the dense side of the maximum
     */
    static BoundaryLine closed(ChebyshevPieces values, double low, double high) {
        ChebyshevPieces slopes = values.derivative();
        double topPlace = Roots.brent(slopes::at, low, high, ROOT, "top of the phase boundary");
        return new BoundaryLine(values, slopes, topPlace, values.at(topPlace), new double[0]);
    }

    /**
     * A line with a gap around its highest point.
     *
     * @param from the s at which the gap begins
     * @param to the s at which it ends
     * @param top a value above all others
     */
    static BoundaryLine open(ChebyshevPieces values, double from, double to, double top) {
        return new BoundaryLine(values, values.derivative(), 0.5 * (from + to), top, new double[] {from, to});
    }

    private double search(double x) {
        double value = top - x * x;
        double lower = x > 0 ? topPlace : values.from();
        double upper = x > 0 ? values.to() : topPlace;
        return Roots.newton(
                s -> new Roots.ValueSlope(values.at(s) - value, slopes.at(s)),
                lower,
                upper,
                0.5 * (lower + upper),
                ROOT,
                x < 0,
                "place on the phase boundary");
    }

    /** ln of the highest value. */
    double top() {
        return top;
    }

    /** Where the highest value is. */
    double topPlace() {
        return topPlace;
    }

    /** Value at an end, the dense one or the thin one. */
    double lowest(boolean dense) {
        return values.at(dense ? values.to() : values.from());
    }

    double at(double s) {
        return values.at(s);
    }

    /** The place of a value (its logarithm) below the top. */
    double place(double value, boolean dense) {
        double x = Math.sqrt(Math.max(top - value, 0));
        return inverse.at(dense ? x : -x);
    }
}
