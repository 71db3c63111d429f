package io.loopstate.web.page;

/**
 * One line of a list to choose from.
 *
 * @param value what is sent
 * @param label what is read
 * @param selected whether it is the one chosen
 */
public record Choice(String value, String label, boolean selected) {}
