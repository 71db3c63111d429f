/**
 * Iterations that end: bracketed roots, safeguarded Newton steps, polynomial and Chebyshev evaluation.
 *
 * <p>May use {@code engine.error}. Knows no physics.
 *
 * <p>Numerical policy:
 * <ul>
 * <li>Every iteration has a bracket and a stated limit; what does not converge throws, naming the iteration.
 * <li>A Newton step that leaves the bracket is replaced by a bisection, so the worst case is the cost of bisection.
 * <li>Convergence is judged on the relative change of the unknown, near the resolution of a double, and the residual is
 * checked afterwards by the caller.
 * <li>No randomness, no dependence on thread, clock or platform: the same input gives the same bits on one build.
 * </ul>
 */
package io.loopstate.engine.numerics;
