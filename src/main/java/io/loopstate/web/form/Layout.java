package io.loopstate.web.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.OptionalInt;

/**
 * How a reply is to be written.
 *
 * @param form the form
 * @param picks pointers or names of the values to write; empty for all of them
 * @param inlineErrors whether a refusal is written in the form of the reply, with status 200
 * @param digits significant digits of numbers; empty for the shortest decimal that reads back
 * @param separator between the cells of separated text
 * @param decimalMark a point or a comma
 * @param byteOrderMark whether separated text begins with a byte order mark
 */
public record Layout(
        Form form,
        List<String> picks,
        boolean inlineErrors,
        OptionalInt digits,
        char separator,
        char decimalMark,
        boolean byteOrderMark) {

    /** JSON as it is. */
    public static final Layout PLAIN = new Layout(Form.JSON, List.of(), false, OptionalInt.empty(), ',', '.', false);

    /** Copies the picks. */
    public Layout {
        picks = List.copyOf(picks);
    }

    /** A value as it is written; nothing for a missing one. */
    String text(JsonNode value) {
        return value.isNumber() ? NumberText.of(value, digits, decimalMark) : value.asText();
    }
}
