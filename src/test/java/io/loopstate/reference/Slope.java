package io.loopstate.reference;

import java.util.function.DoubleUnaryOperator;

/**
 * A first derivative from central differences, extrapolated to step zero (Richardson), with the step at which the
 * extrapolation settles best: C. J. F. Ridders, Adv. Eng. Software 4 (1982) 75-76.
 *
 * @param value the derivative
 * @param error estimate of its error: the difference between the two best extrapolations
 */
record Slope(double value, double error) {
    private static final int STEPS = 10;
    private static final double SHRINK = 1.6;

    static Slope of(DoubleUnaryOperator f, double x, double firstStep) {
        double[][] table = new double[STEPS][STEPS];
        double h = firstStep;
        Slope best = new Slope(Double.NaN, Double.POSITIVE_INFINITY);
        for (int i = 0; i < STEPS; i++) {
            double above = x + h;
            double below = x - h;
            table[i][0] = (f.applyAsDouble(above) - f.applyAsDouble(below)) / (above - below);
            double factor = SHRINK * SHRINK;
            for (int j = 1; j <= i; j++) {
                table[i][j] = table[i][j - 1] + (table[i][j - 1] - table[i - 1][j - 1]) / (factor - 1);
                factor *= SHRINK * SHRINK;
                double error =
                        Math.max(Math.abs(table[i][j] - table[i][j - 1]), Math.abs(table[i][j] - table[i - 1][j - 1]));
                if (error < best.error) {
                    best = new Slope(table[i][j], error);
                }
            }
            h /= SHRINK;
        }
        return best;
    }
}
