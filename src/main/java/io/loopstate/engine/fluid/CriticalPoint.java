package io.loopstate.engine.fluid;

/**
 * Where the equation of state itself has dp/drho = d2p/drho2 = 0.
 *
 * @param temperature K
 * @param pressure Pa
 * @param density kg/m3
 */
public record CriticalPoint(double temperature, double pressure, double density) {}
