package io.loopstate.engine.eos;

/**
 * Density part of a residual term less its power of delta, {@code exp(-c delta^l - eta (delta - epsilon)^2 - beta
 * (delta - gamma))}. Every published form is a special case, so one type serves all of them.
 *
 * @param c factor of the power in the exponent, 0 where there is none
 * @param l that power
 * @param eta width of the bell, 0 where there is none
 * @param epsilon its center
 * @param beta linear term of Kunz and Wagner (2012), 0 where there is none
 * @param gamma its center
 */
record DeltaEnvelope(double c, int l, double eta, double epsilon, double beta, double gamma) {
    static final DeltaEnvelope ONE = new DeltaEnvelope(0, 0, 0, 0, 0, 0);

    static DeltaEnvelope power(double c, int l) {
        return l == 0 ? ONE : new DeltaEnvelope(c, l, 0, 0, 0, 0);
    }

    static DeltaEnvelope bell(double eta, double epsilon) {
        return new DeltaEnvelope(0, 0, eta, epsilon, 0, 0);
    }

    static DeltaEnvelope kunzWagner(double eta, double epsilon, double beta, double gamma) {
        return new DeltaEnvelope(0, 0, eta, epsilon, beta, gamma);
    }
}
