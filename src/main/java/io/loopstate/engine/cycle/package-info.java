/**
 * The use cases of the engine: whole calculations, each one call from a specification record to a result record.
 *
 * <p>May use every other package of the engine. This and {@link io.loopstate.engine.property} are what the web layer
 * calls.
 *
 * <p>Numerical policy: a result holds every number that the reply can show, so nothing is computed twice; the sum of the
 * energy flows around the loop is checked before the result leaves.
 */
package io.loopstate.engine.cycle;
