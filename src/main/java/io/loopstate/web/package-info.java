/**
 * The REST service around the engine.
 *
 * <p>A request goes one way in and one way out: {@link io.loopstate.web.dto} is read, {@link io.loopstate.web.mapping}
 * turns it into SI and gathers every fault of the input, one call of the engine answers, and the same packages turn the
 * result back. There is no state between requests and no second call of the engine.
 */
package io.loopstate.web;
