package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.JsonObject;

/**
 * The range a source states for its correlation, where it is narrower than that of the equation of state.
 *
 * @param minTemperature K, zero where the source sets no bound of its own
 * @param maxTemperature K, infinite likewise
 * @param maxPressure Pa, infinite likewise
 */
public record CorrelationRange(double minTemperature, double maxTemperature, double maxPressure) {
    /** No bounds beside those of the equation of state. */
    public static final CorrelationRange UNBOUNDED =
            new CorrelationRange(0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    static CorrelationRange of(JsonObject json) {
        return new CorrelationRange(
                json.optionalNumber("Tmin").orElse(UNBOUNDED.minTemperature),
                json.optionalNumber("Tmax").orElse(UNBOUNDED.maxTemperature),
                json.optionalNumber("pMax").orElse(UNBOUNDED.maxPressure));
    }

    boolean contains(double temperature, double pressure) {
        return temperature >= minTemperature && temperature <= maxTemperature && pressure <= maxPressure;
    }
}
