/**
 * Property diagrams: the lines of a refrigerant in the plane of two properties, as runs of states.
 *
 * <p>May use {@code engine.error}, {@code engine.eos}, {@code engine.fluid}, {@code engine.property} and {@code engine.flash}.
 *
 * <p>Numerical policy: every vertex is a state that the equilibrium answered, none is interpolated. A line is halved where its
 * middle lies off the chord by more than a share of the window, at most six times. Where the equilibrium refuses, a line ends.
 */
package io.loopstate.engine.diagram;
