package io.loopstate.engine.cycle;

/** Places around the loop, in the direction of flow. */
public enum PointName {
    COMPRESSOR_INLET,
    COMPRESSOR_OUTLET,
    CONDENSER_INLET,
    CONDENSER_OUTLET,
    /** As the condenser's, above the critical pressure. */
    GAS_COOLER_INLET,
    GAS_COOLER_OUTLET,
    VALVE_INLET,
    EVAPORATOR_INLET,
    EVAPORATOR_OUTLET,
    /** Where compression without loss would end; no place in the loop. */
    ISENTROPIC_COMPRESSOR_OUTLET
}
