package io.loopstate.engine.eos;

/** A term of the residual Helmholtz energy as published. */
public sealed interface ResidualTerm {
    /** The same term with another coefficient, n multiplied by a factor. */
    ResidualTerm scaled(double factor);

    /** {@code n tau^t exp(g(tau)) delta^d exp(-f(delta))}: all forms but the non-analytic one. */
    record Separable(double n, int d, DeltaEnvelope density, TauFactor temperature) implements ResidualTerm {
        @Override
        public ResidualTerm scaled(double factor) {
            return new Separable(factor * n, d, density, temperature);
        }
    }

    /**
     * Non-analytic term for the critical region, Span and Wagner (1996) eq. 6.1, the same in Wagner and Pruss (2002):
     * {@code n Delta^b delta psi}.
     */
    record NonAnalytic(double n, double a, double b, double beta, double capitalA, double capitalB, double c, double d)
            implements ResidualTerm {
        @Override
        public ResidualTerm scaled(double factor) {
            return new NonAnalytic(factor * n, a, b, beta, capitalA, capitalB, c, d);
        }
    }

    /** {@code n delta^d tau^t exp(-c delta^l)}, without the exponential where l = 0. */
    static ResidualTerm power(double n, int d, double t, double c, int l) {
        return new Separable(n, d, DeltaEnvelope.power(c, l), new TauFactor(t, new TauFactor.None()));
    }

    /** {@code n delta^d tau^t exp(-eta (delta - epsilon)^2 - beta (tau - gamma)^2)}. */
    static ResidualTerm gaussian(double n, int d, double t, double eta, double epsilon, double beta, double gamma) {
        return new Separable(n, d, DeltaEnvelope.bell(eta, epsilon), new TauFactor(t, new TauFactor.Bell(beta, gamma)));
    }

    /** {@code n delta^d tau^t exp(-delta^l - tau^m)}. */
    static ResidualTerm doubleExponential(double n, int d, double t, int l, double m) {
        return new Separable(n, d, DeltaEnvelope.power(1, l), new TauFactor(t, new TauFactor.Stretched(m)));
    }

    /** {@code n delta^d tau^t exp(-eta (delta - epsilon)^2 + 1 / (beta (tau - gamma)^2 + b))}. */
    static ResidualTerm associating(
            double n, int d, double t, double eta, double epsilon, double beta, double gamma, double b) {
        return new Separable(
                n, d, DeltaEnvelope.bell(eta, epsilon), new TauFactor(t, new TauFactor.Associating(beta, gamma, b)));
    }

    /** {@code n delta^d tau^t exp(-eta (delta - epsilon)^2 - beta (delta - gamma))}. */
    static ResidualTerm kunzWagner(double n, int d, double t, double eta, double epsilon, double beta, double gamma) {
        return new Separable(
                n, d, DeltaEnvelope.kunzWagner(eta, epsilon, beta, gamma), new TauFactor(t, new TauFactor.None()));
    }
}
