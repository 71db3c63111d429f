package io.loopstate.engine.property;

/**
 * One thermodynamic state with every number that follows from the equation of state, in SI units per kilogram.
 *
 * @param phase phase; a saturated liquid is {@code LIQUID} with quality 0, a saturated vapor {@code VAPOR} with quality 1
 * @param temperature K
 * @param pressure Pa, absolute
 * @param density kg/m3
 * @param specificEnthalpy J/kg, to the reference state of the equilibrium that made it
 * @param specificEntropy J/(kg K), likewise
 * @param specificInternalEnergy J/kg, likewise
 * @param vaporQuality kg/kg, NaN outside the dome
 * @param isobaricHeatCapacity J/(kg K), NaN for a mixture of phases, as are all that follow but the compressibility factor
 * @param isochoricHeatCapacity J/(kg K)
 * @param speedOfSound m/s
 * @param jouleThomsonCoefficient (dT/dp)_h, K/Pa
 * @param compressibilityFactor p / (rho R T), with the gas constant of the equation
 * @param isentropicExponent rho w^2 / p = -(v/p)(dp/dv)_s
 * @param thermalExpansion (1/v)(dv/dT)_p, 1/K
 * @param isothermalCompressibility -(1/v)(dv/dp)_T, 1/Pa
 */
public record State(
        Phase phase,
        double temperature,
        double pressure,
        double density,
        double specificEnthalpy,
        double specificEntropy,
        double specificInternalEnergy,
        double vaporQuality,
        double isobaricHeatCapacity,
        double isochoricHeatCapacity,
        double speedOfSound,
        double jouleThomsonCoefficient,
        double compressibilityFactor,
        double isentropicExponent,
        double thermalExpansion,
        double isothermalCompressibility) {

    /** m3/kg. */
    public double specificVolume() {
        return 1 / density;
    }

    /** Whether the state lies inside the dome or on its edge, so that it has a quality. */
    public boolean saturated() {
        return !Double.isNaN(vaporQuality);
    }
}
