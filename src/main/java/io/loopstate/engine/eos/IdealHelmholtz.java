package io.loopstate.engine.eos;

import java.util.ArrayList;
import java.util.List;

/**
 * Ideal-gas part of the reduced Helmholtz energy, {@code ln(delta) + a1 + a2 tau + a ln(tau) + sum n tau^t + sum n ln(1 + c
 * exp(-theta tau))}.
 */
public final class IdealHelmholtz {
    private final double a1;
    private final double a2;
    private final double logTau;
    private final double[] powerN;
    private final double[] powerT;
    private final double[] einsteinN;
    private final double[] einsteinC;
    private final double[] einsteinTheta;

    private IdealHelmholtz(
            double a1,
            double a2,
            double logTau,
            double[] powerN,
            double[] powerT,
            double[] einsteinN,
            double[] einsteinC,
            double[] einsteinTheta) {
        this.a1 = a1;
        this.a2 = a2;
        this.logTau = logTau;
        this.powerN = powerN;
        this.powerT = powerT;
        this.einsteinN = einsteinN;
        this.einsteinC = einsteinC;
        this.einsteinTheta = einsteinTheta;
    }

    /**
     * @param a1 constant, sets the datum of entropy
     * @param a2 factor of tau, sets the datum of enthalpy
     * @param logTau factor of ln(tau)
     * @param powers pairs (n, t)
     * @param einstein triples (n, c, theta)
     */
    public static IdealHelmholtz of(double a1, double a2, double logTau, double[][] powers, double[][] einstein) {
        return new IdealHelmholtz(
                a1,
                a2,
                logTau,
                column(powers, 0),
                column(powers, 1),
                column(einstein, 0),
                column(einstein, 1),
                column(einstein, 2));
    }

    private static double[] column(double[][] rows, int k) {
        double[] column = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            column[i] = rows[i][k];
        }
        return column;
    }

    /** The same with other constants added to a1 and a2: another datum of entropy and enthalpy. */
    IdealHelmholtz shifted(double byA1, double byA2) {
        return new IdealHelmholtz(a1 + byA1, a2 + byA2, logTau, powerN, powerT, einsteinN, einsteinC, einsteinTheta);
    }

    /** One component of a mixture of ideal gases: its fraction and what turns the mixture's tau and delta into its own. */
    record Share(IdealHelmholtz gas, double moleFraction, double tauRatio, double deltaRatio) {}

    /** Ideal part of a mixture of fixed composition: {@code sum x_i (alpha0_i + ln x_i)}, each at its own tau and delta. */
    static IdealHelmholtz mixture(List<Share> shares) {
        double a1 = 0;
        double a2 = 0;
        double logTau = 0;
        List<double[]> powers = new ArrayList<>();
        List<double[]> einstein = new ArrayList<>();
        for (Share s : shares) {
            IdealHelmholtz gas = s.gas();
            double x = s.moleFraction();
            double ratio = s.tauRatio();
            a1 += x * (gas.a1 + gas.logTau * Math.log(ratio) + Math.log(s.deltaRatio() * x));
            a2 += x * gas.a2 * ratio;
            logTau += x * gas.logTau;
            for (int k = 0; k < gas.powerN.length; k++) {
                powers.add(new double[] {x * gas.powerN[k] * Math.pow(ratio, gas.powerT[k]), gas.powerT[k]});
            }
            for (int k = 0; k < gas.einsteinN.length; k++) {
                einstein.add(new double[] {x * gas.einsteinN[k], gas.einsteinC[k], gas.einsteinTheta[k] * ratio});
            }
        }
        return of(a1, a2, logTau, powers.toArray(double[][]::new), einstein.toArray(double[][]::new));
    }

    /** The part that depends on temperature: all but ln(delta). */
    TemperaturePart at(double tau) {
        double log = Math.log(tau);
        double value = a1 + a2 * tau + logTau * log;
        double t = a2 * tau + logTau;
        double tt = -logTau;
        for (int k = 0; k < powerN.length; k++) {
            double term = powerN[k] * Math.exp(powerT[k] * log);
            value += term;
            t += powerT[k] * term;
            tt += powerT[k] * (powerT[k] - 1) * term;
        }
        for (int k = 0; k < einsteinN.length; k++) {
            double x = einsteinTheta[k] * tau;
            double e = einsteinC[k] * Math.exp(-x);
            double share = x / (1 + e);
            // e is above -1 by far, and an absolute error of one ulp of 1 is what the sum has anyway
            value += einsteinN[k] * Math.log(1 + e);
            t -= einsteinN[k] * e * share;
            tt += einsteinN[k] * e * share * share;
        }
        return new TemperaturePart(value, t, tt);
    }

    /** alpha0 - ln(delta), tau alpha0_tau, tau^2 alpha0_tautau. */
    record TemperaturePart(double value, double t, double tt) {}
}
