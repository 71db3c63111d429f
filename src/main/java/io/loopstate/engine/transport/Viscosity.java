package io.loopstate.engine.transport;

/** A viscosity correlation, complete in itself; Pa s. NaN or a value not above zero where it has none. */
sealed interface Viscosity
        permits SumViscosity, ConformalViscosity, ResidualEntropyViscosity, ChungViscosity, WaterViscosity {
    double at(Point point);
}
