package io.loopstate.engine.rejection;

import java.util.OptionalDouble;

/**
 * What is left of a coil that is known to have been better.
 *
 * @param ratio measured over clean conductance; empty where the clean one is not known
 * @param foulingResistance m2 K/W of the layer that explains the difference; empty where its area is not known either
 */
public record Cleanliness(OptionalDouble ratio, OptionalDouble foulingResistance) {
    /**
     * The judgment.
     *
     * @param conductance W/K as the coil works
     * @param clean W/K when clean
     * @param dirt whose area a layer would cover
     */
    static Cleanliness of(double conductance, OptionalDouble clean, Dirt dirt) {
        if (clean.isEmpty()) {
            return new Cleanliness(OptionalDouble.empty(), OptionalDouble.empty());
        }
        return new Cleanliness(
                OptionalDouble.of(conductance / clean.getAsDouble()),
                dirt.area().isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(dirt.area().getAsDouble() * (1 / conductance - 1 / clean.getAsDouble())));
    }
}
