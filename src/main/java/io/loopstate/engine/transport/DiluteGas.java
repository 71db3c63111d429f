package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;

/** Viscosity of a dilute gas from its Lennard-Jones parameters, times a factor that is 1 but for large molecules. */
record DiluteGas(double factor, DiluteViscosity.Neufeld neufeld) {

    /** Reads {@code sigma}, {@code epsilonOverK} and, where present, {@code diluteFactor}. */
    static DiluteGas of(JsonObject json, Fluid fluid) {
        return new DiluteGas(
                json.optionalNumber("diluteFactor").orElse(1), DiluteViscosity.Neufeld.of(json, fluid.molarMass()));
    }

    /** Pa s. */
    double at(double temperature) {
        return factor * neufeld.at(temperature);
    }
}
