package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;

/**
 * The factors of the trade between an airflow and its heat, as they are for this air: 1.08, 4.5 and 0.68 in inch-pound units for
 * dry air of 0.075 lb/ft3, 0.24 Btu/(lb degF) and water of 1054 Btu/lb.
 *
 * @param sensible sensible heat per volume flow and temperature difference, J/(m3 K)
 * @param total total heat per volume flow and enthalpy difference: dry air in the volume, kg/m3
 * @param latent latent heat per volume flow and difference of humidity ratio, J/m3
 */
public record AirFactors(double sensible, double total, double latent) {
    /** Heat capacity of liquid water, J/(kg K). Source: ASHRAE Fundamentals 2017, chapter 1, equation 33 (from memory). */
    static final double WATER_HEAT_CAPACITY = 4186;

    /** Where the factors come from. */
    static final String SOURCE = "ASHRAE Handbook - Fundamentals 2017, chapter 1, equations 26 and 30 (from memory)";

    /**
     * The factors where the flow of air is that of this state.
     *
     * @param condensate temperature of the water that leaves the air, K
     */
    public static AirFactors of(AirState air, double condensate) {
        return of(air, 1 / air.specificVolume(), condensate);
    }

    /**
     * The factors for a flow counted in air of another density.
     *
     * @param dryAir kg of dry air per m3 of the flow
     * @param condensate temperature of the water that leaves the air, K
     */
    public static AirFactors of(AirState air, double dryAir, double condensate) {
        return new AirFactors(
                dryAir * air.heatCapacity(), dryAir, dryAir * (air.vaporEnthalpy() - waterEnthalpy(condensate)));
    }

    /** Of liquid water at a temperature (K), J/kg, 0 at 0 degC. */
    public static double waterEnthalpy(double temperature) {
        return WATER_HEAT_CAPACITY * (temperature - 273.15);
    }
}
