/**
 * Where the parts are put together: producers, loading at the start, health, JSON settings, routes below the resources.
 *
 * <p>May use every package; nothing uses it.
 */
package io.loopstate.wiring;
