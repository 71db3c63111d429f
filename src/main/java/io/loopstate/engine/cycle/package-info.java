/**
 * The use cases of the engine: one call each, from a Spec to a Result that holds every number. SI, per kilogram where
 * specific; nothing is computed later. May use the package component and all that component may use.
 *
 * <p>Numerical policy: impossible inputs end in an {@link io.loopstate.engine.error.EngineException} that names the input;
 * what is possible but unwise or implausible is answered, with a {@link io.loopstate.engine.cycle.Finding}.
 */
package io.loopstate.engine.cycle;
