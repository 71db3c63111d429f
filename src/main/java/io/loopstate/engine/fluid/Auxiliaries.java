package io.loopstate.engine.fluid;

/**
 * Auxiliary saturation equations of a fluid.
 *
 * @param bubblePressure Pa; equal to the dew pressure for a pure fluid
 * @param dewPressure Pa
 * @param liquidDensity mol/m3
 * @param vaporDensity mol/m3
 */
public record Auxiliaries(
        AuxiliaryEquation bubblePressure,
        AuxiliaryEquation dewPressure,
        AuxiliaryEquation liquidDensity,
        AuxiliaryEquation vaporDensity) {}
