package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.JsonObject;
import java.util.Arrays;

/** {@code sum n x^t}. Whole exponents from 0 up are summed by Horner's rule and allow x of either sign; others need x > 0. */
final class PowerSum {
    private static final int MAX_DEGREE = 16;

    private final double[] n;
    private final double[] t;
    /** Coefficients by degree; empty where an exponent is no whole number or negative. */
    private final double[] polynomial;

    PowerSum(double[] n, double[] t) {
        if (n.length != t.length) {
            throw new IllegalArgumentException(n.length + " coefficients for " + t.length + " exponents");
        }
        this.n = n.clone();
        this.t = t.clone();
        this.polynomial = byDegree(n, t);
    }

    /** Reads the members {@code n} and {@code t}. */
    static PowerSum of(JsonObject json) {
        return new PowerSum(json.numbers("n"), json.numbers("t"));
    }

    /** {@code sum n_k x^k}. */
    static PowerSum polynomial(double[] n) {
        double[] exponents = new double[n.length];
        Arrays.setAll(exponents, k -> k);
        return new PowerSum(n, exponents);
    }

    private static double[] byDegree(double[] n, double[] t) {
        int degree = 0;
        for (double exponent : t) {
            if (exponent != Math.rint(exponent) || exponent < 0 || exponent > MAX_DEGREE) {
                return new double[0];
            }
            degree = Math.max(degree, (int) exponent);
        }
        double[] coefficients = new double[degree + 1];
        for (int k = 0; k < n.length; k++) {
            coefficients[(int) t[k]] += n[k];
        }
        return coefficients;
    }

    double at(double x) {
        double sum = 0;
        if (polynomial.length > 0) {
            for (int k = polynomial.length - 1; k >= 0; k--) {
                sum = sum * x + polynomial[k];
            }
            return sum;
        }
        double log = Math.log(x);
        for (int k = 0; k < n.length; k++) {
            sum += n[k] * Math.exp(t[k] * log);
        }
        return sum;
    }
}
