package io.loopstate.engine.air;

/** What can be known of moist air beside its pressure. */
public enum AirVariable {
    /** K. */
    DRY_BULB("dryBulb"),
    /** K, thermodynamic. */
    WET_BULB("wetBulb"),
    /** Partial pressure of the water vapor over that of saturated air, 0 to 1. */
    RELATIVE_HUMIDITY("relativeHumidity"),
    /** K; below the triple point the frost point. */
    DEW_POINT("dewPoint"),
    /** kg of water vapor per kg of dry air. */
    HUMIDITY_RATIO("humidityRatio"),
    /** J per kg of dry air, 0 for dry air at 0 degC. */
    SPECIFIC_ENTHALPY("specificEnthalpy");

    private final String input;

    AirVariable(String input) {
        this.input = input;
    }

    /** The name by which errors speak of it. */
    public String input() {
        return input;
    }
}
