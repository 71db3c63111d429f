package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import java.util.List;

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

    /**
     * Mole fractions in the phase that is about to form on an edge, in the order of the components; empty where it has the
     * composition of the whole.
     *
     * @param fixed TEMPERATURE or PRESSURE
     * @param value of it, K or Pa, between the lowest and the highest one
     * @param bubble on the edge of the liquid, where vapor forms, or on that of the vapor
     */
    default List<Double> incipient(SplitVariable fixed, double value, boolean bubble) {
        return List.of();
    }
}
