/**
 * Equations of state: the terms of the reduced Helmholtz energy and their derivatives.
 *
 * <p>May use {@code engine.error} and {@code engine.numerics}. Knows no fluid by name and no flash.
 *
 * <p>Numerical policy: each term is a small immutable type whose formula stands above its code with its source; its
 * derivatives are analytic, never differences. The part of a term that depends on temperature alone is computed once per
 * temperature. Arguments are the reduced density and the inverse reduced temperature of the published equation, and the
 * symbols are the paper's.
 */
package io.loopstate.engine.eos;
