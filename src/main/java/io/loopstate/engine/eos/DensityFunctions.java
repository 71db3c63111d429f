package io.loopstate.engine.eos;

import java.util.ArrayList;
import java.util.List;

/** The distinct density functions delta^d exp(-f(delta)) of a model, grouped by envelope, ascending in d. */
final class DensityFunctions {
    record Function(int d, DeltaEnvelope envelope) {}

    /** Power of delta of each function. */
    final int[] d;
    /** Functions start[e] to start[e+1] - 1 share envelope e. */
    final int[] start;

    private final double[] c;
    private final int[] l;
    private final double[] eta;
    private final double[] epsilon;
    private final double[] beta;
    private final double[] gamma;
    private final boolean[] plain;

    /** @param functions distinct, grouped by envelope */
    DensityFunctions(List<Function> functions) {
        d = functions.stream().mapToInt(Function::d).toArray();
        List<DeltaEnvelope> envelopes = new ArrayList<>();
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i < functions.size(); i++) {
            DeltaEnvelope envelope = functions.get(i).envelope();
            if (i == 0 || !envelope.equals(envelopes.get(envelopes.size() - 1))) {
                envelopes.add(envelope);
                starts.add(i);
            }
        }
        starts.add(functions.size());
        start = starts.stream().mapToInt(Integer::intValue).toArray();
        c = envelopes.stream().mapToDouble(DeltaEnvelope::c).toArray();
        l = envelopes.stream().mapToInt(DeltaEnvelope::l).toArray();
        eta = envelopes.stream().mapToDouble(DeltaEnvelope::eta).toArray();
        epsilon = envelopes.stream().mapToDouble(DeltaEnvelope::epsilon).toArray();
        beta = envelopes.stream().mapToDouble(DeltaEnvelope::beta).toArray();
        gamma = envelopes.stream().mapToDouble(DeltaEnvelope::gamma).toArray();
        plain = new boolean[envelopes.size()];
        for (int e = 0; e < plain.length; e++) {
            plain[e] = envelopes.get(e).equals(DeltaEnvelope.ONE);
        }
    }

    /** {@code c delta^l} of envelope e, from which the rest follows. */
    double power(int e, double delta) {
        double result = c[e];
        if (result != 0) {
            for (int k = 0; k < l[e]; k++) {
                result *= delta;
            }
        }
        return result;
    }

    /** {@code exp(-f)}. */
    double value(int e, double delta, double power) {
        if (plain[e]) {
            return 1;
        }
        double x = delta - epsilon[e];
        return Math.exp(-power - eta[e] * x * x - beta[e] * (delta - gamma[e]));
    }

    /** {@code Ef} with E = delta d/ddelta. */
    double first(int e, double delta, double power) {
        return l[e] * power + (2 * eta[e] * (delta - epsilon[e]) + beta[e]) * delta;
    }

    /** {@code E(Ef)}. */
    double second(int e, double delta, double power) {
        return l[e] * l[e] * power + (2 * eta[e] * (2 * delta - epsilon[e]) + beta[e]) * delta;
    }

    /** {@code E(E(Ef))}. */
    double third(int e, double delta, double power) {
        return l[e] * l[e] * l[e] * power + (2 * eta[e] * (4 * delta - epsilon[e]) + beta[e]) * delta;
    }

    int size() {
        return d.length;
    }

    int envelopes() {
        return c.length;
    }
}
