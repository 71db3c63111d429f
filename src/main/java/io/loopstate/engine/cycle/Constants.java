package io.loopstate.engine.cycle;

/** Physical and unit constants. */
public final class Constants {
    /**
     * Btu/h in one W, with the International Table Btu of 1055.05585262 J. Source: NIST Special Publication 811 (2008),
     * appendix B.
     */
    public static final double BTU_PER_HOUR_PER_WATT = 3600 / 1055.05585262;

    /** W in one ton of refrigeration, 12 000 Btu/h. Source: the same. */
    public static final double WATT_PER_TON = 12_000 / BTU_PER_HOUR_PER_WATT;

    /**
     * Gas constant of dry air, J/(kg K). Source: ASHRAE Handbook - Fundamentals 2017, chapter 1, equation 1 (from memory).
     */
    static final double DRY_AIR_GAS_CONSTANT = 287.042;

    /**
     * Isobaric heat capacity of dry air, J/(kg K). Source: ASHRAE Handbook - Fundamentals 2017, chapter 1, equation 28 (from
     * memory).
     */
    static final double DRY_AIR_HEAT_CAPACITY = 1006;

    private Constants() {}
}
