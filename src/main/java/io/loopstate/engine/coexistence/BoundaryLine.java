package io.loopstate.engine.coexistence;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.ChebyshevPieces;
import io.loopstate.engine.numerics.Roots;

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
    /** Difference (of logarithms) up to which a place on the inverse is taken as it is. */
    private static final double EXACT = 1e-9;

    /** The same up to which it is corrected. */
    private static final double NEAR = 1e-3;

    private static final int STEPS = 4;

    private final Branches branches;
    private final ChebyshevPieces inverse;

    private BoundaryLine(Branches branches, ChebyshevPieces inverse) {
        this.branches = branches;
        this.inverse = inverse;
    }

    /**
     * Values over s on both sides of a place, where the highest one is or would be.
     *
     * @param values ln T or ln p
     * @param topPlace the place that divides them
     * @param top a value above all others
     */
    private record Branches(ChebyshevPieces values, ChebyshevPieces slopes, double topPlace, double top) {
        /** How far, in x, the value at s is from the top. */
        double distance(double s) {
            return Math.sqrt(top - values.at(s));
        }

        /** The s at a distance, on the dense side where that is positive. */
        double search(double x) {
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

        /** The inverse beyond a distance on each side, and what lies between them. */
        BoundaryLine inverted(double thin, ChebyshevPieces between, double dense, double width) {
            return new BoundaryLine(
                    this,
                    ChebyshevPieces.graded(this::search, -thin, -distance(values.from()), width, TOLERANCE)
                            .then(between)
                            .then(ChebyshevPieces.graded(
                                    this::search, dense, distance(values.to()), width, TOLERANCE)));
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
        Branches branches = new Branches(values, slopes, topPlace, values.at(topPlace));
        double near = Math.min(FIRST_WIDTH, Math.min(branches.distance(values.to()), branches.distance(values.from())));
        return branches.inverted(near, ChebyshevPieces.fit(branches::search, -near, near, TOLERANCE), near, near);
    }

    /**
     * A line with a gap around its highest point; a straight line holds the place of what is not known.
     *
     * @param from the s at which the gap begins
     * @param to the s at which it ends
     * @param top a value above all others
     */
    static BoundaryLine open(ChebyshevPieces values, double from, double to, double top) {
        Branches branches = new Branches(values, values.derivative(), 0.5 * (from + to), top);
        double thin = branches.distance(from);
        double dense = branches.distance(to);
        ChebyshevPieces across =
                ChebyshevPieces.single(x -> from + (to - from) * (x + thin) / (thin + dense), -thin, dense);
        return branches.inverted(thin, across, dense, FIRST_WIDTH);
    }

    /** ln of the highest value. */
    double top() {
        return branches.top();
    }

    /** Where the highest value is. */
    double topPlace() {
        return branches.topPlace();
    }

    /** Value at an end, the dense one or the thin one. */
    double lowest(boolean dense) {
        return branches.values()
                .at(dense ? branches.values().to() : branches.values().from());
    }

    double at(double s) {
        return branches.values().at(s);
    }

    /**
     * The place of a value (its logarithm) below the top.
     *
     * @throws EngineException OUT_OF_RANGE where the line has more than one such place on a side or none, so that the inverse
     *     is no function, as at a second liquid
     */
    double place(double value, boolean dense) {
        double x = Math.sqrt(Math.max(branches.top() - value, 0));
        double s = inverse.at(dense ? x : -x);
        double off = at(s) - value;
        for (int k = 0; k < STEPS && Math.abs(off) > EXACT && Math.abs(off) < NEAR; k++) {
            s -= off / branches.slopes().at(s);
            off = at(s) - value;
        }
        if (Math.abs(off) <= EXACT) {
            return s;
        }
        throw EngineException.of(
                ErrorCode.OUT_OF_RANGE,
                "the bubble or dew line of this mixture turns back here, probably at a second liquid, and is not computed");
    }
}
