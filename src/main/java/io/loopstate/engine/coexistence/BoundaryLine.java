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

    /**
     * @param values of ln T or ln p over s
     * @param low an s on the thin side of the maximum
     * @param high an s on the dense side of the maximum
     */
    BoundaryLine(ChebyshevPieces values, double low, double high) {
        this.values = values;
        slopes = values.derivative();
        topPlace = Roots.brent(slopes::at, low, high, ROOT, "top of the phase boundary");
        top = values.at(topPlace);
        double dense = Math.sqrt(top - values.at(values.to()));
        double thin = Math.sqrt(top - values.at(values.from()));
        DoubleUnaryOperator place = this::search;
        double near = Math.min(FIRST_WIDTH, Math.min(dense, thin));
        inverse = ChebyshevPieces.graded(place, -near, -thin, near, TOLERANCE)
                .then(ChebyshevPieces.fit(place, -near, near, TOLERANCE))
                .then(ChebyshevPieces.graded(place, near, dense, near, TOLERANCE));
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
