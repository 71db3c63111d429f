/**
 * Published values against this very engine: each is asked for the way any client would ask, and the reply is compared with
 * the printed digits. Nothing is kept from one report to the next but the printed values themselves.
 *
 * <p>A deviation counts in half units of the last printed digit, so that up to 1 the value here rounds to the printed one. May
 * use {@code web.dto}, {@code web.problem}, {@code web.verify}, {@code web.template} and {@code units}.
 */
package io.loopstate.web.verification;
