/**
 * Refusals in the form of RFC 9457, {@code application/problem+json}: every fault at once, each with its place, what was
 * got, what is allowed, and a hint.
 *
 * <p>May use {@code web.dto} and {@code engine.error}. Status 400 says that a request cannot be read, 422 that it can be
 * read but is physically impossible or outside a model's range. A reply never holds a stack trace.
 */
package io.loopstate.web.problem;
