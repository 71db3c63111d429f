package io.loopstate.engine.cycle;

/** What a number is, so that whoever shows it can choose the unit. The SI unit of each is the one named here. */
public enum QuantityKind {
    /** K, a level. */
    TEMPERATURE,
    /** K, a difference. */
    TEMPERATURE_DIFFERENCE,
    /** Pa, absolute. */
    PRESSURE,
    /** Pa, a difference. */
    PRESSURE_DIFFERENCE,
    /** J/kg, a difference or an amount of heat or work. */
    SPECIFIC_ENERGY,
    /** J/kg, counted from the reference state. */
    SPECIFIC_ENTHALPY,
    /** J/(kg K), counted from the reference state. */
    SPECIFIC_ENTROPY,
    /** J/(kg K). */
    SPECIFIC_HEAT_CAPACITY,
    /** kg/m3. */
    DENSITY,
    /** m3/kg. */
    SPECIFIC_VOLUME,
    /** kg/s. */
    MASS_FLOW,
    /** m3/s. */
    VOLUME_FLOW,
    /** W. */
    POWER,
    /** J/m3. */
    VOLUMETRIC_CAPACITY,
    /** m. */
    LENGTH,
    /** V. */
    VOLTAGE,
    /** A. */
    CURRENT,
    /** m2. */
    AREA,
    /** kg of water vapor per kg of dry air. */
    HUMIDITY_RATIO,
    /** W/K. */
    THERMAL_CONDUCTANCE,
    /** W/(m2 K). */
    HEAT_TRANSFER_COEFFICIENT,
    /** J/(m3 K), sensible heat per volume flow and temperature difference. */
    SENSIBLE_HEAT_FACTOR,
    /** kg/m3, total heat per volume flow and enthalpy difference. */
    TOTAL_HEAT_FACTOR,
    /** J/m3, latent heat per volume flow and difference of humidity ratio. */
    LATENT_HEAT_FACTOR,
    /** m2 K/W. */
    FOULING_RESISTANCE,
    /** m3. */
    VOLUME,
    /** kg. */
    MASS,
    /** J. */
    ENERGY,
    /** m/s. */
    SPEED,
    /** 1/s. */
    FREQUENCY,
    /** A plain number. */
    RATIO
}
