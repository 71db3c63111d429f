package io.loopstate.engine.eos;

/**
 * Properties of one phase at a temperature and a density, molar and SI, with the derivatives that iterations need.
 *
 * @param temperature K
 * @param density mol/m3
 * @param pressure Pa
 * @param enthalpy J/mol
 * @param entropy J/(mol K)
 * @param pressureByDensity (dp/drho)_T, J/mol
 * @param pressureByTemperature (dp/dT)_rho, Pa/K
 * @param enthalpyByDensity (dh/drho)_T, J m3/mol2, of residual terms alone, so that it is right in the thinnest gas
 * @param isochoricHeatCapacity J/(mol K)
 * @param idealIsobaricHeatCapacity heat capacity of the ideal gas, J/(mol K)
 * @param residualEnergy alphar, dimensionless
 * @param residualEntropy s_r / R at given T and rho, dimensionless
 */
public record MolarState(
        double temperature,
        double density,
        double pressure,
        double enthalpy,
        double entropy,
        double pressureByDensity,
        double pressureByTemperature,
        double enthalpyByDensity,
        double isochoricHeatCapacity,
        double idealIsobaricHeatCapacity,
        double residualEnergy,
        double residualEntropy) {

    static MolarState of(
            double temperature,
            double density,
            double r,
            IdealHelmholtz.TemperaturePart ideal,
            double logDelta,
            Derivatives residual) {
        double rt = r * temperature;
        double energyPart = ideal.t() + residual.t();
        return new MolarState(
                temperature,
                density,
                density * rt * (1 + residual.d()),
                rt * (1 + energyPart + residual.d()),
                r * (energyPart - logDelta - ideal.value() - residual.value()),
                rt * (1 + 2 * residual.d() + residual.dd()),
                density * r * (1 + residual.d() - residual.dt()),
                rt * (residual.d() + residual.dd() + residual.dt()) / density,
                -r * (ideal.tt() + residual.tt()),
                r * (1 - ideal.tt()),
                residual.value(),
                residual.t() - residual.value());
    }

    /** The same with constants added to enthalpy (J/mol) and entropy (J/(mol K)): another datum. */
    public MolarState shifted(double byEnthalpy, double byEntropy) {
        return new MolarState(
                temperature,
                density,
                pressure,
                enthalpy + byEnthalpy,
                entropy + byEntropy,
                pressureByDensity,
                pressureByTemperature,
                enthalpyByDensity,
                isochoricHeatCapacity,
                idealIsobaricHeatCapacity,
                residualEnergy,
                residualEntropy);
    }

    /** J/mol. */
    public double internalEnergy() {
        return enthalpy - pressure / density;
    }

    /** J/mol. */
    public double gibbsEnergy() {
        return enthalpy - temperature * entropy;
    }

    /** cp = cv + T (dp/dT)^2 / (rho^2 dp/drho), J/(mol K). */
    public double isobaricHeatCapacity() {
        double ratio = pressureByTemperature / density;
        return isochoricHeatCapacity + temperature * ratio * ratio / pressureByDensity;
    }

    /** (dh/dT)_rho, J/(mol K). */
    public double enthalpyByTemperature() {
        return isochoricHeatCapacity + pressureByTemperature / density;
    }

    /** (ds/drho)_T = -(dp/dT)_rho / rho^2, J m3/(mol2 K). */
    public double entropyByDensity() {
        return -pressureByTemperature / (density * density);
    }
}
