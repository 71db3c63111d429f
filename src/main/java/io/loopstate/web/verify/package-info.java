/**
 * Requests against expected values: reads a file of cases, answers each request the way of any other, judges the replies and
 * writes the report. Values are compared in the unit of the expectation, with decimal arithmetic, so that a difference of
 * exactly the tolerance passes.
 *
 * <p>May use {@code web.dto}, {@code web.problem}, {@code web.mapping} and {@code units}.
 */
package io.loopstate.web.verify;
