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

    /** Edges at a temperature (K) between the lowest and the critical one. */
    Edges atTemperature(double temperature);

    /** Edges at a pressure (Pa) between the lowest and the critical one. */
    Edges atPressure(double pressure);

    /** Pressure at the lowest temperature, Pa; the lower of the two where they differ. */
    double minPressure();

    /** Whether a state between the edges is a mixture of the two edge states. */
    boolean coexisting();
}
