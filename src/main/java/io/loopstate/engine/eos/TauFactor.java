package io.loopstate.engine.eos;

/**
 * Temperature part of a residual term, {@code tau^t exp(g(tau))}.
 *
 * @param t exponent of tau
 * @param envelope the exponential
 */
record TauFactor(double t, Envelope envelope) {

    /** {@code exp(g(tau))}, with {@code tau g'} and {@code tau (tau g')'} for the derivatives. */
    sealed interface Envelope {
        double exponent(double tau);

        /** {@code tau dg/dtau}. */
        double slope(double tau);

        /** {@code tau d(slope)/dtau}. */
        double curvature(double tau);
    }

    /** No exponential: g = 0. */
    record None() implements Envelope {
        @Override
        public double exponent(double tau) {
            return 0;
        }

        @Override
        public double slope(double tau) {
            return 0;
        }

        @Override
        public double curvature(double tau) {
            return 0;
        }
    }

    /** g = -beta (tau - gamma)^2: Gaussian bell-shaped terms, Setzmann and Wagner (1991). */
    record Bell(double beta, double gamma) implements Envelope {
        @Override
        public double exponent(double tau) {
            return -beta * (tau - gamma) * (tau - gamma);
        }

        @Override
        public double slope(double tau) {
            return -2 * beta * tau * (tau - gamma);
        }

        @Override
        public double curvature(double tau) {
            return -2 * beta * tau * (2 * tau - gamma);
        }
    }

    /** g = -tau^m: Lemmon and Jacobsen (2005), the R-125 equation. */
    record Stretched(double m) implements Envelope {
        @Override
        public double exponent(double tau) {
            return -Math.pow(tau, m);
        }

        @Override
        public double slope(double tau) {
            return -m * Math.pow(tau, m);
        }

        @Override
        public double curvature(double tau) {
            return -m * m * Math.pow(tau, m);
        }
    }

    /** g = 1 / q with q = beta (tau - gamma)^2 + b: associating term of Gao et al. (2023), ammonia. */
    record Associating(double beta, double gamma, double b) implements Envelope {
        private double q(double tau) {
            return beta * (tau - gamma) * (tau - gamma) + b;
        }

        @Override
        public double exponent(double tau) {
            return 1 / q(tau);
        }

        @Override
        public double slope(double tau) {
            double q = q(tau);
            return -2 * beta * tau * (tau - gamma) / (q * q);
        }

        @Override
        public double curvature(double tau) {
            double q = q(tau);
            double q1 = 2 * beta * (tau - gamma);
            return -tau * (q1 + 2 * beta * tau - 2 * tau * q1 * q1 / q) / (q * q);
        }
    }
}
