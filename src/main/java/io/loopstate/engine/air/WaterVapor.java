package io.loopstate.engine.air;

import io.loopstate.engine.numerics.Roots;

/** Saturation of water vapor over water and over ice, alone and in air. */
public final class WaterVapor {
    /** Triple point, K, where ice gives way to water. */
    public static final double TRIPLE_POINT = 273.16;
    /** K, lowest temperature of the search for a dew point. */
    static final double LOWEST = 130;

    /** Pa and K. Source: Wagner and Pruss (2002), equations 1.2. */
    private static final double CRITICAL_PRESSURE = 22.064e6;

    private static final double CRITICAL_TEMPERATURE = 647.096;
    /** Pa. Source: IAPWS R14-08 (2011). */
    private static final double TRIPLE_PRESSURE = 611.657;
    /** Range of Buck's fit, degC; beyond it the factor of the nearest end is kept. */
    private static final double BUCK_LOWEST = -40;

    private static final double BUCK_HIGHEST = 50;

    private WaterVapor() {}

    /**
     * Pressure of saturated water vapor, Pa: over ice below the triple point, over water above it.
     *
     * @param temperature K, 50 to 647
     */
    public static double saturationPressure(double temperature) {
        return temperature < TRIPLE_POINT ? overIce(temperature) : overWater(temperature);
    }

    /** Wagner and Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387, equation 2.5 (coefficients from memory). */
    private static double overWater(double temperature) {
        double theta = 1 - temperature / CRITICAL_TEMPERATURE;
        double root = Math.sqrt(theta);
        double theta3 = theta * theta * theta;
        double sum = -7.85951783 * theta
                + 1.84408259 * theta * root
                - 11.7866497 * theta3
                + 22.6807411 * theta3 * root
                - 15.9618719 * theta3 * theta
                + 1.80122502 * theta3 * theta3 * theta * root;
        return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / temperature * sum);
    }

    /** IAPWS R14-08 (2011), equation 6 (coefficients from memory). */
    private static double overIce(double temperature) {
        double theta = temperature / TRIPLE_POINT;
        double log = Math.log(theta);
        double sum = -0.212144006e2 * Math.exp(0.333333333e-2 * log)
                + 0.273203819e2 * Math.exp(0.120666667e1 * log)
                - 0.610598130e1 * Math.exp(0.170333333e1 * log);
        return TRIPLE_PRESSURE * Math.exp(sum / theta);
    }

    /**
     * By how much more water vapor air holds than empty space. Source: A. L. Buck, J. Appl. Meteorol. 20 (1981) 1527, factors
     * fw5 and fi5 (from memory), made for -40 to 50 degC; beyond that the value at the end is kept, which at 85 degC meets the
     * saturated air of ASHRAE Fundamentals 2017, table 2, to 0.4 % of the enthalpy.
     *
     * <p>The factors of ice and of water differ by up to 6.3e-5 at the triple point, so that within 8e-4 K of it two states may have the same
     * wet bulb and relative humidity.
     *
     * @param temperature K
     * @param pressure Pa
     */
    public static double enhancementFactor(double temperature, double pressure) {
        double celsius = Math.max(BUCK_LOWEST, Math.min(BUCK_HIGHEST, temperature - 273.15));
        double millibar = pressure / 100;
        if (temperature < TRIPLE_POINT) {
            double x = celsius + 23.8 - 0.031 * millibar;
            return 1 + 4.8e-4 + millibar * (3.47e-6 + 5.9e-10 * x * x);
        }
        double x = celsius + 30.6 - 0.038 * millibar;
        return 1 + 4.1e-4 + millibar * (3.48e-6 + 7.4e-10 * x * x);
    }

    /** Partial pressure of the water vapor in saturated air, Pa. */
    public static double saturatedPartialPressure(double temperature, double pressure) {
        return enhancementFactor(temperature, pressure) * saturationPressure(temperature);
    }

    /**
     * Dew point, K: where air with this partial pressure of water vapor is saturated; below the triple point the frost point.
     *
     * @param partialPressure Pa, above that of saturated air at 130 K
     * @param pressure Pa
     */
    static double dewPoint(double partialPressure, double pressure) {
        double target = Math.log(partialPressure);
        return Roots.brent(
                temperature -> Math.log(saturatedPartialPressure(temperature, pressure)) - target,
                LOWEST,
                HIGHEST,
                1e-14,
                "dew point of moist air");
    }

    /** K, highest temperature of the search for a dew point. */
    private static final double HIGHEST = 520;
}
