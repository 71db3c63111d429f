package io.loopstate.engine.eos;

/**
 * An equation of state explicit in the Helmholtz energy, a(T, rho) / (R T) = alpha0(tau, delta) + alphar(tau, delta), on a
 * molar basis.
 *
 * <p>Immutable. Work starts from {@link #isotherm}, which does once what depends on temperature alone.
 */
public final class HelmholtzModel {
    private final double gasConstant;
    private final double reducingTemperature;
    private final double reducingDensity;
    private final IdealHelmholtz ideal;
    private final ResidualHelmholtz residual;

    /**
     * @param gasConstant J/(mol K), the one that belongs to the equation
     * @param reducingTemperature K
     * @param reducingDensity mol/m3
     */
    public HelmholtzModel(
            double gasConstant,
            double reducingTemperature,
            double reducingDensity,
            IdealHelmholtz ideal,
            ResidualHelmholtz residual) {
        this.gasConstant = gasConstant;
        this.reducingTemperature = reducingTemperature;
        this.reducingDensity = reducingDensity;
        this.ideal = ideal;
        this.residual = residual;
    }

    /** J/(mol K). */
    public double gasConstant() {
        return gasConstant;
    }

    /** K. */
    public double reducingTemperature() {
        return reducingTemperature;
    }

    /** mol/m3. */
    public double reducingDensity() {
        return reducingDensity;
    }

    /** Whether the equation has non-analytic terms, which put its critical point at the reducing point. */
    public boolean nonAnalytic() {
        return !residual.nonAnalytic.isEmpty();
    }

    /**
     * The same equation with enthalpy and entropy moved by constants.
     *
     * @param enthalpy J/mol added to every enthalpy
     * @param entropy J/(mol K) added to every entropy
     */
    public HelmholtzModel shifted(double enthalpy, double entropy) {
        return new HelmholtzModel(
                gasConstant,
                reducingTemperature,
                reducingDensity,
                ideal.shifted(-entropy / gasConstant, enthalpy / (gasConstant * reducingTemperature)),
                residual);
    }

    /** The equation at one temperature (K). */
    public Isotherm isotherm(double temperature) {
        return new Isotherm(this, temperature, residual.at(reducingTemperature / temperature));
    }

    IdealHelmholtz ideal() {
        return ideal;
    }

    ResidualHelmholtz residual() {
        return residual;
    }

    IdealHelmholtz.TemperaturePart idealAt(double temperature) {
        return ideal.at(reducingTemperature / temperature);
    }
}
