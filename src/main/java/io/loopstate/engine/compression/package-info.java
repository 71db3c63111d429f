/**
 * What a compressor does: use cases from a Spec to a Result that holds every number, and models of machines that are cheap to
 * ask inside an iteration. SI, per kilogram where specific. May use {@code engine.cycle} for findings, limits and working,
 * {@code engine.component} and all that those may use.
 *
 * <p>Numerical policy: every path is that of the equation of state; formulas of the ideal gas stand beside it, so labeled, and
 * feed nothing. Integrals along a path are taken to 1e-11 of their own size, roots to 1e-12 inside a bracket. Impossible inputs
 * end in an {@link io.loopstate.engine.error.EngineException} that names the input; what is possible but unwise is answered,
 * with a finding.
 */
package io.loopstate.engine.compression;
