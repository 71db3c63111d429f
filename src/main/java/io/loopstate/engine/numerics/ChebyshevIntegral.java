package io.loopstate.engine.numerics;

/**
 * Running integrals of a smooth function from its values at the Chebyshev points of 0 to 1, ends included: exact for the
 * polynomial through them. Source: C. W. Clenshaw, A. R. Curtis, Numerische Mathematik 2 (1960) 197-205.
 */
public final class ChebyshevIntegral {
    private final double[] points;
    private final double[][] matrix;
    private final double[][] cardinals;

    /** With this many intervals, 2 or more. */
    public ChebyshevIntegral(int intervals) {
        points = new double[intervals + 1];
        matrix = new double[intervals + 1][intervals + 1];
        cardinals = new double[intervals + 1][];
        for (int i = 0; i <= intervals; i++) {
            points[i] = (1 - Math.cos(Math.PI * i / intervals)) / 2;
        }
        for (int j = 0; j <= intervals; j++) {
            cardinals[j] = coefficients(intervals, j);
            for (int i = 0; i <= intervals; i++) {
                matrix[i][j] = integral(cardinals[j], 2 * points[i] - 1) / 2;
            }
        }
    }

    /** Number of points. */
    public int size() {
        return points.length;
    }

    /** A point, from 0 at the first to 1 at the last. */
    public double point(int index) {
        return points[index];
    }

    /** The integral from 0 to a point, of a function with these values at the points. */
    public double integral(int index, double[] values) {
        double sum = 0;
        for (int j = 0; j < points.length; j++) {
            sum += matrix[index][j] * values[j];
        }
        return sum;
    }

    /** The integral from 0 to a place between 0 and 1, of a function with these values at the points. */
    public double integral(double place, double[] values) {
        double[] coefficients = new double[points.length];
        for (int k = 0; k < coefficients.length; k++) {
            for (int j = 0; j < points.length; j++) {
                coefficients[k] += cardinals[j][k] * values[j];
            }
        }
        return integral(coefficients, 2 * place - 1) / 2;
    }

    /** Chebyshev coefficients of the polynomial that is 1 at one point and 0 at the others. */
    private double[] coefficients(int n, int at) {
        double[] coefficients = new double[n + 1];
        double weight = (at == 0 || at == n ? 1.0 : 2.0) / n;
        for (int k = 0; k <= n; k++) {
            // The points run upward, so the cosine of the k-th polynomial changes sign with each odd k.
            double value = Math.cos(Math.PI * k * at / n) * (k % 2 == 0 ? 1 : -1);
            coefficients[k] = weight * value * (k == 0 || k == n ? 0.5 : 1);
        }
        return coefficients;
    }

    /** Integral of a Chebyshev series from -1 to x. */
    private static double integral(double[] coefficients, double x) {
        double sum = 0;
        for (int k = 0; k < coefficients.length; k++) {
            sum += coefficients[k] * (primitive(k, x) - primitive(k, -1));
        }
        return sum;
    }

    private static double primitive(int k, double x) {
        if (k == 0) {
            return x;
        }
        return k == 1 ? x * x / 2 : (polynomial(k + 1, x) / (k + 1) - polynomial(k - 1, x) / (k - 1)) / 2;
    }

    private static double polynomial(int k, double x) {
        return Math.cos(k * Math.acos(x));
    }
}
