/**
 * The calculation engine: plain Java, no framework, no transport, no units other than SI.
 *
 * <p>Every value is a {@code double} in SI base or derived units without prefix: kelvin, pascal, kilogram, joule, watt,
 * metre, second. Pressures are absolute. Every type is immutable and safe to share between threads.
 *
 * <p>Layers, lowest first: {@link io.loopstate.engine.error}, {@link io.loopstate.engine.numerics},
 * {@link io.loopstate.engine.eos}, {@link io.loopstate.engine.fluid}, {@link io.loopstate.engine.property},
 * {@link io.loopstate.engine.flash} and {@link io.loopstate.engine.transport}, {@link io.loopstate.engine.component},
 * {@link io.loopstate.engine.cycle}. A package sees only packages below it; {@code ArchitectureTest} holds this.
 *
 * <p>A calculation either returns a result that was checked against its own inputs or throws an
 * {@code EngineException}. It never returns {@code null}, a NaN that is not documented, or a
 * value outside the range of its model.
 */
package io.loopstate.engine;
