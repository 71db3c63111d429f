/**
 * What stands between the network and the resources: limits, who may ask and how often, slow clients, overload.
 *
 * <p>Handlers of the platform's router, in the order of {@link io.loopstate.wiring.guard.Order}. May use {@code web.problem},
 * {@code web.mapping} and {@code engine.numerics}; used by {@code wiring}. Nothing here looks at the wall clock.
 */
package io.loopstate.wiring.guard;
