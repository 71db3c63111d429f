/**
 * What the service tells about its work: ids of requests, metrics, the access log.
 *
 * <p>Nothing here knows inputs, results, keys or addresses. Labels of metrics have few values, whatever clients send. May use
 * {@code wiring.guard}, {@code web.problem}, {@code web.mapping} and the engine's counts; used by {@code wiring}.
 */
package io.loopstate.wiring.telemetry;
