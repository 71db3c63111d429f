package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.JsonObject;

/** {@code sum n delta^d tau^t exp(-gamma delta^l)}, the shape of most residual correlations. */
final class ReducedSum {
    private final double[] n;
    private final double[] d;
    private final double[] t;
    private final double[] gamma;
    private final double[] l;

    /** @param gamma empty where no term has an exponential, as is l */
    ReducedSum(double[] n, double[] d, double[] t, double[] gamma, double[] l) {
        if (n.length != d.length || n.length != t.length || gamma.length != l.length) {
            throw new IllegalArgumentException("coefficients and exponents differ in number");
        }
        this.n = n.clone();
        this.d = d.clone();
        this.t = t.clone();
        this.gamma = gamma.length == 0 ? new double[n.length] : gamma.clone();
        this.l = l.length == 0 ? new double[n.length] : l.clone();
    }

    /** Reads the members {@code n}, {@code d}, {@code t} and, where present, {@code gamma} and {@code l}. */
    static ReducedSum of(JsonObject json) {
        return new ReducedSum(
                json.numbers("n"),
                json.numbers("d"),
                json.numbers("t"),
                json.optionalNumbers("gamma"),
                json.optionalNumbers("l"));
    }

    double at(double tau, double delta) {
        double logTau = Math.log(tau);
        double logDelta = Math.log(delta);
        double sum = 0;
        for (int k = 0; k < n.length; k++) {
            double exponent = t[k] * logTau + d[k] * logDelta;
            if (gamma[k] != 0) {
                exponent -= gamma[k] * Math.exp(l[k] * logDelta);
            }
            sum += n[k] * Math.exp(exponent);
        }
        return sum;
    }
}
