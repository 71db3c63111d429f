package io.loopstate.engine.numerics;

import java.util.function.DoubleUnaryOperator;

/**
 * A root that was searched for, and how: what a calculation shows of its iteration.
 *
 * @param root in the units of the unknown
 * @param trials evaluations of the function
 * @param lower end of the bracket it was searched in
 * @param upper end of that bracket
 * @param residual the function at the root
 */
public record Search(double root, int trials, double lower, double upper, double residual) {
    /**
     * {@link Roots#brent} that counts.
     *
     * @param tolerance relative to the root
     * @param name of the iteration, for the error
     */
    public static Search brent(
            DoubleUnaryOperator function, double lower, double upper, double tolerance, String name) {
        int[] trials = {0};
        double root = Roots.brent(
                x -> {
                    trials[0]++;
                    return function.applyAsDouble(x);
                },
                lower,
                upper,
                tolerance,
                name);
        return new Search(root, trials[0], lower, upper, function.applyAsDouble(root));
    }

    /** The same search in another unknown, of which this one was a function. */
    public Search in(DoubleUnaryOperator unknown) {
        return new Search(
                unknown.applyAsDouble(root),
                trials,
                unknown.applyAsDouble(lower),
                unknown.applyAsDouble(upper),
                residual);
    }
}
