/**
 * Many calculations in one request: rows of JSON or of separated text in, one answer for each in the same order out. A row that
 * is refused never spoils the rest.
 *
 * <p>Knows nothing of sockets: {@code wiring} moves the bytes. May use {@code web.dto}, {@code web.problem} and {@code
 * web.mapping}. What is kept in memory is bounded by the window of {@link io.loopstate.web.batch.OrderedWork}, however many rows
 * there are.
 */
package io.loopstate.web.batch;
