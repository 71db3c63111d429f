/**
 * The sockets of {@code web.batch}: streams of rows, the threads that answer them, and their limits.
 *
 * <p>A stream lives on the event loop of its connection. It asks for bytes only while its window has room, and takes answers out
 * of the window only while the connection takes them, so that a slow reader slows the sender.
 */
package io.loopstate.wiring.batch;
