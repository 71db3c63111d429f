/**
 * From the wire to the engine and back: units to SI and SI to the units asked for.
 *
 * <p>May use {@code web.dto}, {@code web.problem}, {@code units} and {@code engine}. All faults of an input are gathered
 * before the first one is reported.
 *
 * <p>Numerical policy: one conversion in, one conversion out, no rounding on the way.
 */
package io.loopstate.web.mapping;
