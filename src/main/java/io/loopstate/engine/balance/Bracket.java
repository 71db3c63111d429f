package io.loopstate.engine.balance;

import java.util.function.DoubleUnaryOperator;

/**
 * An interval in which a function falls from above zero to zero or below, or that begins or ends where the function may.
 *
 * @param lower where it is above zero, or the least value that may be tried
 * @param upper where it is not, or the greatest
 */
record Bracket(double lower, double upper) {
    private static final double WIDER = 4;

    /** From a guess, by ever longer strides towards where the sign changes. */
    static Bracket around(DoubleUnaryOperator function, double guess, double stride, double least, double most) {
        double from = Math.max(least, Math.min(most, guess));
        boolean up = function.applyAsDouble(from) > 0;
        double end = up ? most : least;
        double length = stride;
        while (from != end) {
            double to = up ? Math.min(most, from + length) : Math.max(least, from - length);
            if (function.applyAsDouble(to) > 0 != up) {
                return up ? new Bracket(from, to) : new Bracket(to, from);
            }
            from = to;
            length *= WIDER;
        }
        return new Bracket(from, from);
    }
}
