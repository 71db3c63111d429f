/**
 * The parts of a refrigeration loop: compressor, condenser, evaporator, expansion valve, lines, air and water streams.
 *
 * <p>May use every package of the engine except {@link io.loopstate.engine.cycle}.
 *
 * <p>Numerical policy: a component turns inlet states and its own figures into outlet states and rates, and its energy and
 * mass balances close. Rules of the trade are defaults that a caller can replace, each with its source or the words
 * "common practice".
 */
package io.loopstate.engine.component;
