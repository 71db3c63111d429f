package io.loopstate.engine.flash;

/** Where liquid and vapor coexist. */
interface Dome {
    /**
     * Both edges of the dome at one temperature or one pressure.
     *
     * @param bubbleTemperature K
     * @param bubblePressure Pa
     * @param liquidDensity mol/m3
     * @param dewTemperature K
     * @param dewPressure Pa
     * @param vaporDensity mol/m3
     */
    record Edges(
            double bubbleTemperature,
            double bubblePressure,
            double liquidDensity,
            double dewTemperature,
            double dewPressure,
            double vaporDensity) {}

    /** Highest temperature at which phases coexist, K; for a blend above the critical one. */
    double topTemperature();

    /** Highest pressure at which phases coexist, Pa; for a blend above the critical one. */
    double topPressure();

    /** Edges at a temperature (K) between the lowest and the highest one. */
    Edges atTemperature(double temperature);

    /** Edges at a pressure (Pa) between the lowest and the highest one. */
    Edges atPressure(double pressure);

    /** Lowest pressure at which both edges exist, Pa. */
    double minPressure();

    /** Lowest temperature (K) of the vapor at a pressure (Pa) below the lowest one of both edges. */
    double thinVaporTemperature(double pressure);
}
