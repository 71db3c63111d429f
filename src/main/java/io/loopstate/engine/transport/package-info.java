/**
 * Viscosity, thermal conductivity and surface tension of refrigerants, from published correlations. {@link
 * io.loopstate.engine.transport.TransportProperties} is the door.
 *
 * <p>May use {@code engine.error}, {@code engine.numerics}, {@code engine.eos}, {@code engine.fluid} and
 * {@code engine.property}.
 *
 * <p>Numerical policy:
 * <ul>
 * <li>Correlations are explicit in temperature and density, built once per fluid. Only the conformal state of
 * corresponding-states correlations is found by iteration, with a stated limit; what does not converge throws, naming the
 * iteration.
 * <li>They hold within the limits of the equation of state, where the error states the limits. Outside a tighter range of
 * its own a correlation has no answer.
 * <li>Fluids without a published correlation, mixtures included, have none: nothing is estimated.
 * <li>A value that leaves is finite and positive.
 * </ul>
 */
package io.loopstate.engine.transport;
