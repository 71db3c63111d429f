/**
 * Phase equilibrium and states from any two properties: a class per pair of inputs.
 *
 * <p>May use {@code engine.error}, {@code engine.numerics}, {@code engine.eos}, {@code engine.coexistence}, {@code engine.fluid} and
 * {@code engine.property}.
 *
 * <p>Numerical policy:
 * <ul>
 * <li>Density roots are sought inside bounds known from the saturation curve and the spinodal.
 * <li>Starting values are tried in a stated order; every iteration is a safeguarded Newton method in a bracket.
 * <li>Every answer is checked against its inputs, and coexisting phases against equal pressure and fugacity, before it
 * leaves. What fails is an error, never a wrong number.
 * <li>Inputs outside the model's range are refused with the range; nothing is extrapolated.
 * </ul>
 */
package io.loopstate.engine.flash;
