package io.loopstate.engine.transport;

/** A thermal-conductivity correlation, complete in itself; W/(m K). NaN or a value not above zero where it has none. */
sealed interface ThermalConductivity permits SumConductivity, ConformalConductivity, WaterConductivity {
    /** @param viscosity of the fluid at the point, Pa s; the critical enhancement reads it */
    double at(Point point, double viscosity);
}
