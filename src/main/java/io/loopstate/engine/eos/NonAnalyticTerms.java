package io.loopstate.engine.eos;

import java.util.List;

/**
 * The non-analytic terms of: {@code n Delta^b delta psi}, Delta = theta^2 + B ((delta - 1)^2)^a, theta = (1
 * - tau) + A ((delta - 1)^2)^(1/(2 beta)), psi = exp(-C (delta - 1)^2 - D (tau - 1)^2). Span and Wagner (1996), table 32.
 *
 * <p>Derivatives are those of ln(term), which are simple rational functions of Delta.
 */
final class NonAnalyticTerms {
    /** exp(-60) is 1e-26: such a term adds nothing in double precision, derivatives included. */
    private static final double NEGLIGIBLE_EXPONENT = 60;

    /** Distance kept from delta = 1, where Delta vanishes with theta; 1e-9 moves no property by a digit. */
    private static final double SMALLEST_DISTANCE = 1e-9;

    private final ResidualTerm.NonAnalytic[] terms;

    NonAnalyticTerms(List<ResidualTerm.NonAnalytic> terms) {
        this.terms = terms.toArray(ResidualTerm.NonAnalytic[]::new);
    }

    boolean isEmpty() {
        return terms.length == 0;
    }

    Derivatives addTo(Derivatives sum, double tau, double delta) {
        double x = delta - 1;
        if (Math.abs(x) < SMALLEST_DISTANCE) {
            x = Math.copySign(SMALLEST_DISTANCE, x);
        }
        double logY = Math.log(x * x);
        Derivatives total = sum;
        for (ResidualTerm.NonAnalytic term : terms) {
            total = add(total, term, tau, delta, x, logY);
        }
        return total;
    }

    private static Derivatives add(
            Derivatives sum, ResidualTerm.NonAnalytic t, double tau, double delta, double x, double logY) {
        double exponent = t.c() * x * x + t.d() * (tau - 1) * (tau - 1);
        if (exponent > NEGLIGIBLE_EXPONENT) {
            return sum;
        }
        double y = x * x;
        double m = 1 / (2 * t.beta());
        double slopePart = t.capitalA() * Math.exp((m - 1) * logY);
        double bodyPart = t.capitalB() * Math.exp((t.a() - 1) * logY);
        double theta = (1 - tau) + slopePart * y;
        double big = theta * theta + bodyPart * y;

        // Delta's derivatives over Delta, paper's table 32
        double thetaD = 2 * m * slopePart * x;
        double thetaDD = 2 * m * (2 * m - 1) * slopePart;
        double bigD = (2 * theta * thetaD + 2 * t.a() * bodyPart * x) / big;
        double bigDD = (2 * thetaD * thetaD + 2 * theta * thetaDD + 2 * t.a() * (2 * t.a() - 1) * bodyPart) / big;
        double bigT = -2 * theta / big;
        double bigTT = 2 / big;
        double bigDT = -2 * thetaD / big;

        double value = t.n() * Math.exp(t.b() * Math.log(big) - exponent) * delta;
        double logD = 1 + t.b() * delta * bigD - 2 * t.c() * x * delta;
        double logDlogD = t.b() * delta * (bigD + delta * (bigDD - bigD * bigD)) - 2 * t.c() * delta * (2 * delta - 1);
        double logT = t.b() * tau * bigT - 2 * t.d() * tau * (tau - 1);
        double logTlogT = t.b() * tau * (bigT + tau * (bigTT - bigT * bigT)) - 2 * t.d() * tau * (2 * tau - 1);
        double logDlogT = t.b() * tau * delta * (bigDT - bigD * bigT);
        return new Derivatives(
                sum.value() + value,
                sum.d() + value * logD,
                sum.t() + value * logT,
                sum.dd() + value * (logD * (logD - 1) + logDlogD),
                sum.dt() + value * (logD * logT + logDlogT),
                sum.tt() + value * (logT * (logT - 1) + logTlogT));
    }
}
