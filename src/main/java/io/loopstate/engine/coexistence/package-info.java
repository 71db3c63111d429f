/**
 * Coexisting phases of a mixture of given composition: where the first bubble or drop of another phase appears, the lines
 * that these points form, the critical point on them, and the split into liquid and vapor between them.
 *
 * <p>May use {@code engine.error}, {@code engine.numerics} and {@code engine.eos}. Knows no refrigerant by name and no pair
 * of inputs.
 *
 * <p>Numerical policy: the unknowns are logarithms of temperature and of the amounts per volume of each component in each
 * phase, so that no density is solved for inside and every derivative is analytic. Newton's method from starting values
 * that are close, with steps held back; what does not converge throws or is left to a slower way, never returned.
 */
package io.loopstate.engine.coexistence;
