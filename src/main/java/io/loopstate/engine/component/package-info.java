/**
 * The parts of a refrigeration loop, each a pure function from states to states: SI, per kilogram of refrigerant, no
 * state kept. May use the packages error, numerics, eos, fluid, property and flash.
 *
 * <p>Numerical policy: every state comes from {@link io.loopstate.engine.flash.Equilibrium}; nothing here extrapolates or
 * replaces a failed calculation by a number.
 */
package io.loopstate.engine.component;
