package io.loopstate.engine.air;

import io.loopstate.engine.numerics.Roots;

/**
 * Thermodynamic wet bulb: the temperature to which water, or ice, of its own temperature cools air that it saturates. Sources:
 * ASHRAE Handbook - Fundamentals 2017, chapter 1, equation 33 over water and 35 over ice (from memory).
 *
 * <p>Close to 0 degC a wet wick and an iced one read differently: where both are possible the wet one is meant.
 */
final class WetBulb {
    /** K: a wick below it is iced. */
    private static final double FREEZING = 273.15;

    private WetBulb() {}

    /** Humidity ratio of air with these two temperatures, K; negative where no air has them. */
    static double humidityRatio(double pressure, double dryBulb, double wetBulb) {
        double saturated = AirState.saturatedHumidityRatio(pressure, wetBulb);
        double t = dryBulb - AirState.ZERO_CELSIUS;
        double wet = wetBulb - AirState.ZERO_CELSIUS;
        double cooling = AirState.DRY_AIR_HEAT_CAPACITY * (t - wet);
        return wetBulb >= FREEZING
                ? ((2501e3 - 2326 * wet) * saturated - cooling) / (2501e3 + 1860 * t - 4186 * wet)
                : ((2830e3 - 240 * wet) * saturated - cooling) / (2830e3 + 1860 * t - 2100 * wet);
    }

    /** Dry bulb, K, of air of a wet bulb and a humidity ratio: the same equation solved for t. */
    static double dryBulb(double pressure, double wetBulb, double humidityRatio) {
        double saturated = AirState.saturatedHumidityRatio(pressure, wetBulb);
        double wet = wetBulb - AirState.ZERO_CELSIUS;
        double constant = wetBulb >= FREEZING
                ? (2501e3 - 2326 * wet) * saturated - (2501e3 - 4186 * wet) * humidityRatio
                : (2830e3 - 240 * wet) * saturated - (2830e3 - 2100 * wet) * humidityRatio;
        double t = (constant + AirState.DRY_AIR_HEAT_CAPACITY * wet)
                / (AirState.DRY_AIR_HEAT_CAPACITY + AirState.VAPOR_HEAT_CAPACITY * humidityRatio);
        return t + AirState.ZERO_CELSIUS;
    }

    /** Wet bulb of air, K. */
    static double of(AirState air) {
        double boiling = WaterVapor.dewPoint(air.pressure(), air.pressure());
        // Saturated air is its own wet bulb; rounding must not push it outside the bracket.
        double highest = Math.min(air.dryBulb(), boiling - 1e-9);
        if (humidityRatio(air.pressure(), air.dryBulb(), highest) <= air.humidityRatio()) {
            return highest;
        }
        boolean wet =
                highest >= FREEZING && humidityRatio(air.pressure(), air.dryBulb(), FREEZING) <= air.humidityRatio();
        double lower = wet ? FREEZING : WaterVapor.LOWEST;
        double upper = wet ? highest : Math.min(highest, Math.nextDown(FREEZING));
        return Roots.brent(
                temperature -> humidityRatio(air.pressure(), air.dryBulb(), temperature) - air.humidityRatio(),
                lower,
                upper,
                1e-14,
                "wet bulb of moist air");
    }
}
