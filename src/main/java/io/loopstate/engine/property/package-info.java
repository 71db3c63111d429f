/**
 * Properties of one homogeneous state, from temperature and density.
 *
 * <p>May use {@code engine.error}, {@code engine.numerics}, {@code engine.eos} and {@code engine.fluid}. Finds no phase: whether a temperature and
 * a density describe a stable phase is the business of {@link io.loopstate.engine.flash}.
 *
 * <p>Numerical policy: every property is a closed expression in the derivatives of the Helmholtz energy; nothing iterates
 * here. The reference state of enthalpy and entropy is explicit.
 */
package io.loopstate.engine.property;
