package io.loopstate.engine.eos;

import io.loopstate.engine.eos.ResidualIsotherm.DensityDerivatives;

/**
 * An equation of state at one temperature. All values are molar and SI; density in mol/m3.
 *
 * <p>Not shared between threads: it remembers the ideal-gas part once asked for.
 */
public final class Isotherm {
    private final HelmholtzModel model;
    private final double temperature;
    private final double rt;
    private final ResidualIsotherm residual;
    private IdealHelmholtz.TemperaturePart ideal;

    Isotherm(HelmholtzModel model, double temperature, ResidualIsotherm residual) {
        this.model = model;
        this.temperature = temperature;
        this.rt = model.gasConstant() * temperature;
        this.residual = residual;
    }

    /** K. */
    public double temperature() {
        return temperature;
    }

    /**
     * Pressure and its density derivatives.
     *
     * @param value Pa
     * @param slope dp/drho, J/mol
     * @param curvature d2p/drho2, J m3/mol2, without non-analytic terms
     */
    public record Pressure(double value, double slope, double curvature) {}

    /** p = rho R T (1 + delta alphar_delta) and its first two derivatives in density. */
    public Pressure pressure(double density) {
        DensityDerivatives r = residual.densityDerivatives(density / model.reducingDensity());
        return new Pressure(
                density * rt * (1 + r.d()),
                rt * (1 + 2 * r.d() + r.dd()),
                rt * (2 * r.d() + 4 * r.dd() + r.ddd()) / density);
    }

    /** Residual energy and its derivatives, dimensionless. */
    public Derivatives residual(double density) {
        return residual.derivatives(density / model.reducingDensity());
    }

    /** Every molar property at a density, in one phase. */
    public MolarState state(double density) {
        if (ideal == null) {
            ideal = model.idealAt(temperature);
        }
        return MolarState.of(
                temperature,
                density,
                model.gasConstant(),
                ideal,
                Math.log(density / model.reducingDensity()),
                residual(density));
    }
}
