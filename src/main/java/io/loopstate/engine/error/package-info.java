/**
 * What the engine says when it cannot answer: an exception with a code and its arguments.
 *
 * <p>Codes are part of the contract. They carry numbers and limits in SI and know nothing of HTTP, languages or units of
 * display; the web layer words them.
 *
 * <p>Uses nothing. Used by every other package of the engine, and by {@code web.problem}.
 */
package io.loopstate.engine.error;
