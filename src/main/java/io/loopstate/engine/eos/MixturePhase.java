package io.loopstate.engine.eos;

/**
 * One phase of a mixture at a temperature and the amounts of its components per volume, with the derivatives that phase
 * equilibrium needs. Fugacities and pressures come divided by R T. Not shared between threads.
 *
 * <p>With F = n alphar and n d/dn_i at constant T and V, Kunz and Wagner (2012), section 7.2: {@code F_i = alphar + delta
 * alphar_delta (1 - n d(ln rho_r)/dn_i) + tau alphar_tau n d(ln T_r)/dn_i + n (d alphar/dn_i)_(tau, delta)}, and the second
 * derivatives by the same rule once more.
 */
public final class MixturePhase {
    private final MixtureModel model;
    private final double temperature;
    private final double[] densities;
    private final double density;
    private final double[] x;
    /** alphar and its derivatives for the whole. */
    private final Sums whole = new Sums();

    /** ln of the fugacity coefficient times the compressibility factor, dF/dn_i. */
    private final double[] first;
    /** n d2F/dn_i dn_j, by rows. */
    private final double[] second;
    /** tau dF_i/dtau. */
    private final double[] byTau;

    private IdealHelmholtz.TemperaturePart[] ideal;

    /** Value, delta d, tau t, (delta d/ddelta)^2, delta tau dt, (tau d/dtau)^2. */
    private static final class Sums {
        double value;
        double d;
        double t;
        double ee;
        double dt;
        double tt;

        void add(double factor, Derivatives a) {
            value += factor * a.value();
            d += factor * a.d();
            t += factor * a.t();
            ee += factor * (a.dd() + a.d());
            dt += factor * a.dt();
            tt += factor * (a.tt() + a.t());
        }
    }

    MixturePhase(MixtureModel model, double temperature, double[] densities) {
        this.model = model;
        this.temperature = temperature;
        this.densities = densities;
        int n = densities.length;
        double sum = 0;
        for (double rho : densities) {
            sum += rho;
        }
        density = sum;
        x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = densities[i] / density;
        }
        first = new double[n];
        second = new double[n * n];
        byTau = new double[n];
        derive();
    }

    private void derive() {
        int n = x.length;
        double tr = model.temperature.value(x);
        double vr = model.volume.value(x);
        double tau = tr / temperature;
        double delta = density * vr;

        // of each component: a_i plus the departures it takes part in, q_i
        Sums[] own = new Sums[n];
        double[] q = new double[n];
        double[] departure = new double[n * n];
        double departures = 0;
        double departuresD = 0;
        double departuresT = 0;
        for (int i = 0; i < n; i++) {
            own[i] = new Sums();
            Derivatives a = model.components[i].residual().derivatives(tau, delta);
            own[i].add(1, a);
            whole.add(x[i], a);
        }
        for (MixtureModel.Departure p : model.departures) {
            Derivatives a = p.function().derivatives(tau, delta);
            int i = p.first();
            int j = p.second();
            double share = p.weight() * x[i] * x[j];
            own[i].add(p.weight() * x[j], a);
            own[j].add(p.weight() * x[i], a);
            whole.add(share, a);
            departures += share * a.value();
            departuresD += share * a.d();
            departuresT += share * a.t();
            q[i] += p.weight() * x[j] * a.value();
            q[j] += p.weight() * x[i] * a.value();
            departure[i * n + j] = p.weight() * a.value();
            departure[j * n + i] = departure[i * n + j];
        }

        double[] gradT = new double[n];
        double[] hessT = new double[n * n];
        double[] gradV = new double[n];
        double[] hessV = new double[n * n];
        model.temperature.derivatives(x, gradT, hessT);
        model.volume.derivatives(x, gradV, hessV);

        // n d/dn_i of ln tau, ln delta and, tau and delta fixed, of alphar, delta alphar_delta, tau alphar_tau
        double[] t = new double[n];
        double[] d = new double[n];
        double[] e = new double[n];
        double[] eD = new double[n];
        double[] eT = new double[n];
        double[] f = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = gradT[i] / tr - 2;
            d[i] = gradV[i] / vr - 1;
            e[i] = own[i].value - whole.value - departures;
            eD[i] = own[i].d - whole.d - departuresD;
            eT[i] = own[i].t - whole.t - departuresT;
            f[i] = whole.d * d[i] + whole.t * t[i] + e[i];
            first[i] = whole.value + f[i];
            byTau[i] = whole.t + whole.dt * d[i] + whole.tt * t[i] + eT[i];
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double hT = (hessT[i * n + j] - 2 * gradT[i] - 2 * gradT[j]) / tr + 6;
                double hV = (hessV[i * n + j] - 2 * gradV[i] - 2 * gradV[j]) / vr + 6;
                double dj = whole.ee * d[j] + whole.dt * t[j] + eD[j];
                double tj = whole.dt * d[j] + whole.tt * t[j] + eT[j];
                // n d/dn_j of d_i is w_i + hV - w_i w_j with w = d - 1, of t_i is t_i + hT - t_i t_j
                double wi = d[i] - 1;
                double wj = d[j] - 1;
                double value = f[j]
                        + dj * d[i]
                        + whole.d * (wi + hV - wi * wj)
                        + tj * t[i]
                        + whole.t * (t[i] + hT - t[i] * t[j])
                        + eD[i] * d[j]
                        + eT[i] * t[j]
                        // the last part: n d/dn_j of e_i with tau and delta fixed
                        - own[j].value
                        + whole.value
                        + 3 * departures
                        - q[i]
                        - q[j]
                        + departure[i * n + j];
                second[i * n + j] = value;
                second[j * n + i] = value;
            }
        }
    }

    /** K. */
    public double temperature() {
        return temperature;
    }

    /** mol/m3. */
    public double density() {
        return density;
    }

    /** Mole fraction of a component. */
    public double moleFraction(int i) {
        return x[i];
    }

    /** ln of the fugacity of a component over R T times 1 m3/mol. */
    public double logFugacity(int i) {
        return Math.log(densities[i]) + first[i];
    }

    /** Its derivative with the logarithm of the amount of a component. */
    public double logFugacityByLogAmount(int i, int j) {
        return (i == j ? 1 : 0) + x[j] * second[i * x.length + j];
    }

    /** Its derivative with the logarithm of temperature at constant amounts. */
    public double logFugacityByLogTemperature(int i) {
        return -byTau[i];
    }

    /** p / (R T), mol/m3. */
    public double reducedPressure() {
        return density * (1 + whole.d);
    }

    /** Derivative of p / (R T) with the logarithm of the amount of a component. */
    public double reducedPressureByLogAmount(int j) {
        double sum = 1;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * second[i * x.length + j];
        }
        return densities[j] * sum;
    }

    /** Derivative of p / (R T) with the logarithm of temperature at constant amounts. */
    public double reducedPressureByLogTemperature() {
        return -density * whole.dt;
    }

    /**
     * Whether no small part of the phase gains by becoming denser or richer in a component: the derivatives of the fugacities with
     * the amounts are positive definite, as Cholesky's factors tell.
     */
    public boolean locallyStable() {
        int n = x.length;
        double[][] factor = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = (i == j ? 1 : 0) + Math.sqrt(x[i] * x[j]) * second[i * n + j];
                for (int k = 0; k < j; k++) {
                    sum -= factor[i][k] * factor[j][k];
                }
                if (i == j && !(sum > 0)) {
                    return false;
                }
                factor[i][j] = i == j ? Math.sqrt(sum) : sum / factor[j][j];
            }
        }
        return true;
    }

    /** Molar properties of the phase. */
    public MolarState state() {
        double value = -Math.log(density);
        double t = 0;
        double tt = 0;
        for (int i = 0; i < x.length; i++) {
            IdealHelmholtz.TemperaturePart part = ideal(i);
            value += x[i] * (part.value() + Math.log(densities[i] / model.components[i].reducingDensity()));
            t += x[i] * part.t();
            tt += x[i] * part.tt();
        }
        Derivatives residual =
                new Derivatives(whole.value, whole.d, whole.t, whole.ee - whole.d, whole.dt, whole.tt - whole.t);
        return MolarState.of(
                temperature,
                density,
                MixtureModel.GAS_CONSTANT,
                new IdealHelmholtz.TemperaturePart(value, t, tt),
                Math.log(density),
                residual);
    }

    /** Partial derivative of the entropy per volume with the amount of a component, J/(mol K). */
    public double entropyByAmount(int i) {
        IdealHelmholtz.TemperaturePart part = ideal(i);
        // -(d mu_i/dT)_rho
        return MixtureModel.GAS_CONSTANT * (part.t() + byTau[i] - potential(i));
    }

    /** Partial derivative of the internal energy per volume with the amount of a component, J/mol. */
    public double internalEnergyByAmount(int i) {
        return MixtureModel.GAS_CONSTANT * temperature * (ideal(i).t() + byTau[i]);
    }

    /** Chemical potential over R T. */
    private double potential(int i) {
        return 1 + first[i] + ideal(i).value() + Math.log(densities[i] / model.components[i].reducingDensity());
    }

    private IdealHelmholtz.TemperaturePart ideal(int i) {
        if (ideal == null) {
            ideal = new IdealHelmholtz.TemperaturePart[x.length];
            for (int k = 0; k < x.length; k++) {
                ideal[k] = model.components[k].idealAt(temperature);
            }
        }
        return ideal[i];
    }
}
