/**
 * Replies in other forms than JSON: separated text, one number, flat XML, a table for people; and the parameters that choose
 * among them.
 *
 * <p>Works on the reply as a tree, so that a new operation needs nothing here. May use {@code web.dto} and {@code
 * web.problem}. Numbers are written as the shortest decimal that reads back, unless fewer digits are asked for.
 */
package io.loopstate.web.form;
