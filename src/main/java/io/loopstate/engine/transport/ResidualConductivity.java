package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;

/** sum n tau^t delta^d exp(-gamma delta^l), tau = Tref/T, delta = rho/rhoRef; W/(m K). */
record ResidualConductivity(double referenceTemperature, double referenceDensity, ReducedSum sum) {

    /** A {@code polynomial} brings its own reference point, a {@code polynomial-exponential} uses the reducing point. */
    static ResidualConductivity of(JsonObject json, Fluid fluid) {
        ReducedSum sum = ReducedSum.of(json);
        return switch (json.text("form")) {
            case "polynomial" -> new ResidualConductivity(json.number("Tref"), json.number("rhoRef"), sum);
            case "polynomial-exponential" ->
                new ResidualConductivity(
                        fluid.model().reducingTemperature(), fluid.model().reducingDensity(), sum);
            default -> throw new IllegalArgumentException("unknown residual thermal conductivity " + json.text("form"));
        };
    }

    /** @param density mol/m3 */
    double at(double temperature, double density) {
        return sum.at(referenceTemperature / temperature, density / referenceDensity);
    }
}
