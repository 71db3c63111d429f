package io.loopstate.engine.fluid;

/**
 * Range of an equation of state as its source states it.
 *
 * @param minTemperature K
 * @param maxTemperature K
 * @param maxPressure Pa
 */
public record Limits(double minTemperature, double maxTemperature, double maxPressure) {}
