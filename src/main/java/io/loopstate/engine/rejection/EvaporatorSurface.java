package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;

/**
 * The surface of the boiling zone of an evaporating coil. Where it lies below the dew point of the air, the zone carries more
 * heat by the ratio of the enthalpy to the temperature that drives it (Lewis number 1).
 *
 * @param temperature K, that of the boiling refrigerant between its inlet and its end
 * @param gain heat of the wet surface over that of a dry one, 1 where it stays dry
 * @param drying kg/kg by which air that meets the surface fully is dried
 */
public record EvaporatorSurface(double temperature, double gain, double drying) {
    static EvaporatorSurface under(AirState air, double temperature) {
        double saturated = AirState.saturatedHumidityRatio(air.pressure(), temperature);
        double difference = air.dryBulb() - temperature;
        if (saturated >= air.humidityRatio() || difference <= 0) {
            return new EvaporatorSurface(temperature, 1, 0);
        }
        double drying = air.humidityRatio() - saturated;
        double wet = air.specificEnthalpy()
                - new AirState(air.pressure(), temperature, saturated).specificEnthalpy()
                - drying * AirFactors.waterEnthalpy(temperature);
        return new EvaporatorSurface(temperature, wet / (air.heatCapacity() * difference), drying);
    }

    /** Whether moisture condenses on it. */
    public boolean wet() {
        return drying > 0;
    }
}
