package io.loopstate.engine.air;

/**
 * Moist air by what fixes it, with everything that takes no iteration. Sources: ASHRAE Handbook - Fundamentals 2017, chapter 1
 * (equation numbers from memory).
 *
 * @param pressure Pa
 * @param dryBulb K
 * @param humidityRatio kg of water vapor per kg of dry air
 */
public record AirState(double pressure, double dryBulb, double humidityRatio) {
    /** Molar mass of water over that of dry air. Equation 20. */
    public static final double MASS_RATIO = 0.621945;
    /** Gas constant of dry air, J/(kg K). Equation 1. */
    public static final double GAS_CONSTANT = 287.042;
    /** Isobaric heat capacity of dry air, J/(kg K). Equation 28. */
    public static final double DRY_AIR_HEAT_CAPACITY = 1006;
    /** Isobaric heat capacity of water vapor, J/(kg K). Equation 30. */
    public static final double VAPOR_HEAT_CAPACITY = 1860;
    /** Enthalpy of water vapor at 0 degC, liquid water there having none, J/kg. Equation 30. */
    public static final double VAPOR_ENTHALPY = 2501e3;

    static final double ZERO_CELSIUS = 273.15;

    /** Partial pressure of the water vapor, Pa. Equation 20. */
    public double vaporPressure() {
        return pressure * humidityRatio / (MASS_RATIO + humidityRatio);
    }

    /** Partial pressure of the water vapor over that of saturated air at the dry bulb. Equation 12. */
    public double relativeHumidity() {
        return vaporPressure() / WaterVapor.saturatedPartialPressure(dryBulb, pressure);
    }

    /** J per kg of dry air, 0 for dry air and liquid water at 0 degC. Equation 30. */
    public double specificEnthalpy() {
        double celsius = dryBulb - ZERO_CELSIUS;
        return DRY_AIR_HEAT_CAPACITY * celsius + humidityRatio * (VAPOR_ENTHALPY + VAPOR_HEAT_CAPACITY * celsius);
    }

    /** m3 of mixture per kg of dry air. Equation 26. */
    public double specificVolume() {
        return GAS_CONSTANT * dryBulb * (1 + humidityRatio / MASS_RATIO) / pressure;
    }

    /** kg of mixture per m3. Equation 11. */
    public double density() {
        return (1 + humidityRatio) / specificVolume();
    }

    /** Of the mixture per kg of dry air, J/(kg K): the slope of the enthalpy. */
    public double heatCapacity() {
        return DRY_AIR_HEAT_CAPACITY + humidityRatio * VAPOR_HEAT_CAPACITY;
    }

    /** Enthalpy of the water vapor at the dry bulb, J/kg. Equation 30. */
    public double vaporEnthalpy() {
        return VAPOR_ENTHALPY + VAPOR_HEAT_CAPACITY * (dryBulb - ZERO_CELSIUS);
    }

    /** The same air at another dry bulb, its water kept. */
    public AirState at(double temperature) {
        return new AirState(pressure, temperature, humidityRatio);
    }

    /** Humidity ratio of saturated air, kg/kg; infinite where water boils. Equation 21. */
    public static double saturatedHumidityRatio(double pressure, double temperature) {
        return humidityRatio(pressure, temperature, 1);
    }

    /** Humidity ratio, kg/kg, at a relative humidity; infinite where the vapor alone would have the pressure of the mixture. */
    public static double humidityRatio(double pressure, double temperature, double relativeHumidity) {
        double partial = relativeHumidity * WaterVapor.saturatedPartialPressure(temperature, pressure);
        return partial < pressure ? MASS_RATIO * partial / (pressure - partial) : Double.POSITIVE_INFINITY;
    }

    /** Dry bulb, K, at which air of this humidity ratio has an enthalpy (J per kg of dry air): equation 30 turned round. */
    public static double dryBulb(double specificEnthalpy, double humidityRatio) {
        return ZERO_CELSIUS
                + (specificEnthalpy - humidityRatio * VAPOR_ENTHALPY)
                        / (DRY_AIR_HEAT_CAPACITY + humidityRatio * VAPOR_HEAT_CAPACITY);
    }
}
