package io.loopstate.engine.eos;

/**
 * Reducing temperature or reducing molar volume of a mixture, Kunz and Wagner (2012), eqs. 7.9 and 7.10: {@code Y(x) = sum
 * x_i^2 Y_i + sum_(i<j) a_ij x_i x_j (x_i + x_j) / (beta_ij^2 x_i + x_j)}.
 *
 * <p>Y is homogeneous of degree 2 in x, so that its derivatives with all x free need no convention about which fraction
 * depends on the others.
 */
final class ReducingFunction {
    private final double[] pure;
    private final int[] first;
    private final int[] second;
    /** a_ij = 2 beta gamma Y_ij. */
    private final double[] factor;
    /** beta_ij^2. */
    private final double[] beta2;

    ReducingFunction(double[] pure, int[] first, int[] second, double[] factor, double[] beta2) {
        this.pure = pure;
        this.first = first;
        this.second = second;
        this.factor = factor;
        this.beta2 = beta2;
    }

    /** Y at a composition. */
    double value(double[] x) {
        double sum = 0;
        for (int i = 0; i < pure.length; i++) {
            sum += x[i] * x[i] * pure[i];
        }
        for (int k = 0; k < factor.length; k++) {
            double xi = x[first[k]];
            double xj = x[second[k]];
            sum += factor[k] * xi * xj * (xi + xj) / (beta2[k] * xi + xj);
        }
        return sum;
    }

    /** Adds dY/dx_i to a vector and d2Y/dx_i dx_j to a matrix stored by rows, both zero before. */
    void derivatives(double[] x, double[] gradient, double[] hessian) {
        int n = pure.length;
        for (int i = 0; i < n; i++) {
            gradient[i] += 2 * x[i] * pure[i];
            hessian[i * n + i] += 2 * pure[i];
        }
        for (int k = 0; k < factor.length; k++) {
            int i = first[k];
            int j = second[k];
            double a = factor[k];
            double b = beta2[k];
            double u = x[i];
            double v = x[j];
            double w = 1 / (b * u + v);
            double product = u * v * (u + v) * w;
            double byU = v * (2 * u + v);
            double byV = u * (u + 2 * v);
            gradient[i] += a * w * (byU - b * product);
            gradient[j] += a * w * (byV - product);
            hessian[i * n + i] += a * w * (2 * v - 2 * b * w * (byU - b * product));
            hessian[j * n + j] += a * w * (2 * u - 2 * w * (byV - product));
            double mixed = a * w * (2 * (u + v) - w * (byU + b * byV - 2 * b * product));
            hessian[i * n + j] += mixed;
            hessian[j * n + i] += mixed;
        }
    }
}
