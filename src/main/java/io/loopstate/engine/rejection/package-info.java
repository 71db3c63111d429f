/**
 * Where the heat goes: moist air, the duty of a condenser, air and water beside a coil, and coils themselves. Use cases, one
 * call each from a Spec to a Result that holds every number, and the coils as small pieces that other calculations iterate on.
 * SI. May use the package cycle for findings and working, component, air and all that these may use.
 *
 * <p>Numerical policy: iterations run inside a bracket that is known to hold the answer, or end in an error that says why there
 * is none; each energy balance closes to rounding because heats are differences of the same enthalpies.
 */
package io.loopstate.engine.rejection;
