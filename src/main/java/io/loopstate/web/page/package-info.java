/**
 * The front page: fields that compose a request, its answer for a person to read, and the same request to take away.
 *
 * <p>Knows the reply as a tree and computes nothing: every number on the page is a number of the reply, rounded as the request
 * asks. May use {@code web.dto}, {@code web.problem}, {@code web.mapping}, {@code web.form} and {@code web.template}. Keeps
 * nothing but lists that never change.
 */
package io.loopstate.web.page;
