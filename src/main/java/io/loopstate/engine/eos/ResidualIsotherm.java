package io.loopstate.engine.eos;

/**
 * Residual Helmholtz energy at one temperature, as a function of density alone.
 *
 * <p>With E = delta d/ddelta, a density function G = delta^d exp(-f) has EG = G D, E(EG) = G (D^2 - u2) and E(E(EG)) = G
 * (D^3 - 3 D u2 - u3), where D = d - Ef, u2 = E(Ef), u3 = E(E(Ef)); the derivatives wanted follow from delta^2
 * d2/ddelta2 = E(E - 1) and delta^3 d3/ddelta3 = E(E - 1)(E - 2).
 */
final class ResidualIsotherm {
    private final ResidualHelmholtz model;
    private final double tau;
    private final double[] a;
    private final double[] a1;
    private final double[] a2;

    /** Sums over the terms that share a density function: n F, n tau F', n tau^2 F''. */
    ResidualIsotherm(ResidualHelmholtz model, double tau, double[] a, double[] a1, double[] a2) {
        this.model = model;
        this.tau = tau;
        this.a = a;
        this.a1 = a1;
        this.a2 = a2;
    }

    /** All derivatives up to the second. */
    Derivatives derivatives(double delta) {
        DensityFunctions f = model.density;
        double s = 0;
        double sd = 0;
        double st = 0;
        double sdd = 0;
        double sdt = 0;
        double stt = 0;
        for (int e = 0; e < f.envelopes(); e++) {
            double power = f.power(e, delta);
            double g = f.value(e, delta, power);
            double u1 = f.first(e, delta, power);
            double u2 = f.second(e, delta, power);
            int d = 0;
            for (int i = f.start[e]; i < f.start[e + 1]; i++) {
                for (; d < f.d[i]; d++) {
                    g *= delta;
                }
                double log1 = d - u1;
                double ag = a[i] * g;
                double a1g = a1[i] * g;
                s += ag;
                sd += ag * log1;
                sdd += ag * (log1 * (log1 - 1) - u2);
                st += a1g;
                sdt += a1g * log1;
                stt += a2[i] * g;
            }
        }
        Derivatives regular = new Derivatives(s, sd, st, sdd, sdt, stt);
        return model.nonAnalytic.isEmpty() ? regular : model.nonAnalytic.addTo(regular, tau, delta);
    }

    /** Derivatives in density only, for density iterations and critical points. */
    DensityDerivatives densityDerivatives(double delta) {
        DensityFunctions f = model.density;
        double sd = 0;
        double sdd = 0;
        double sddd = 0;
        for (int e = 0; e < f.envelopes(); e++) {
            double power = f.power(e, delta);
            double g = f.value(e, delta, power);
            double u1 = f.first(e, delta, power);
            double u2 = f.second(e, delta, power);
            double u3 = f.third(e, delta, power);
            int d = 0;
            for (int i = f.start[e]; i < f.start[e + 1]; i++) {
                for (; d < f.d[i]; d++) {
                    g *= delta;
                }
                double log1 = d - u1;
                double ag = a[i] * g;
                double second = log1 * (log1 - 1) - u2;
                sd += ag * log1;
                sdd += ag * second;
                sddd += ag * ((log1 - 2) * second - (2 * log1 - 1) * u2 - u3);
            }
        }
        if (model.nonAnalytic.isEmpty()) {
            return new DensityDerivatives(sd, sdd, sddd);
        }
        Derivatives whole = model.nonAnalytic.addTo(new Derivatives(0, sd, 0, sdd, 0, 0), tau, delta);
        return new DensityDerivatives(whole.d(), whole.dd(), sddd);
    }

    /**
     * delta alpha_delta, delta^2 alpha_deltadelta and delta^3 alpha_deltadeltadelta; the last without non-analytic terms,
     * whose equations have their critical point at the reducing point by construction.
     */
    record DensityDerivatives(double d, double dd, double ddd) {}
}
