/**
 * A whole machine in steady state: compressor, condensing coil, valve and evaporating coil between given indoor and outdoor
 * air, and what changes when something about it does. SI. May use {@code engine.compression} and {@code engine.rejection} and
 * all that those may use.
 *
 * <p>Numerical policy: the unknowns are the two pressures, as logarithms of their logarithmic distance from the pressure at
 * which air and refrigerant would meet, in which the need of a coil is nearly a straight line. A quasi-Newton iteration of at
 * most 40 trials finds them to 1e-11 of each coil's area; where it does not, brackets within brackets do, or show which
 * component has no balance. Every answer is checked against both coils before it is given.
 */
package io.loopstate.engine.balance;
