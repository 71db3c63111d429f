/**
 * Fluids and blends: their models, ranges of validity, limits, classes and published sources, read once from resources.
 *
 * <p>May use {@code engine.error}, {@code engine.numerics}, {@code engine.eos} and, alone in the engine, the streaming
 * parser of {@code com.fasterxml.jackson.core}.
 *
 * <p>Numerical policy: coefficients are read as printed, digit for digit, and are never adjusted. A resource that is
 * incomplete or inconsistent stops the start, naming the file and the field.
 */
package io.loopstate.engine.fluid;
