/**
 * Viscosity, thermal conductivity and surface tension of refrigerants, from published correlations.
 *
 * <p>May use {@code engine.error}, {@code engine.numerics}, {@code engine.eos}, {@code engine.fluid} and
 * {@code engine.property}.
 *
 * <p>Numerical policy: explicit correlations in temperature and density, with their own ranges of validity, which can be
 * narrower than the equation of state's. Outside them the answer is an error that states the range. The published
 * uncertainty goes with the value.
 */
package io.loopstate.engine.transport;
