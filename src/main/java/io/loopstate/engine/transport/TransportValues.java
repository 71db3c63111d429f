package io.loopstate.engine.transport;

import java.util.OptionalDouble;

/**
 * Transport properties of one single-phase state; each empty where the fluid has no correlation, or its correlation no
 * value at that state.
 *
 * @param viscosity Pa s
 * @param thermalConductivity W/(m K)
 */
public record TransportValues(OptionalDouble viscosity, OptionalDouble thermalConductivity) {
    /** No properties, as for a mixture of phases. */
    public static final TransportValues NONE = new TransportValues(OptionalDouble.empty(), OptionalDouble.empty());
}
