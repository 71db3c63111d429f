package io.loopstate.web.problem;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import java.util.Collection;
import java.util.Locale;
import java.util.regex.Pattern;

/** Words what is wrong with a JSON body. */
public final class JsonFaults {
    /** Where a message of the parser begins to tell of the parser: its settings, sources and tokens. */
    private static final Pattern OF_THE_PARSER = Pattern.compile(
            "(?s)( \\(start marker at|: maybe a \\(non-standard\\)|: enable `).*|, from `[^`]*`| in [A-Z]+_[A-Z]+");

    private JsonFaults() {}

    private static String words(JsonProcessingException e) {
        return OF_THE_PARSER.matcher(e.getOriginalMessage()).replaceFirst("");
    }

    /** The fault for an exception that ended the reading; it tells line and column, never a class name. */
    public static Fault of(JsonProcessingException e) {
        if (e instanceof JsonMappingException mapping) {
            return ofMapping(mapping);
        }
        return Fault.request("invalid-json", "The body is not valid JSON" + place(e) + ": " + words(e))
                .withHint("Check quotes, commas and brackets up to that place.");
    }

    /** As above for one line among many, whose number the parser does not know. */
    public static Fault ofRow(JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        String where = at == null ? "" : " at column " + at.getColumnNr();
        return Fault.at(Pointer.ROOT, "invalid-json", "The row is not valid JSON" + where + ": " + words(e))
                .withHint("Each line holds one JSON object and nothing else.");
    }

    private static Fault ofMapping(JsonMappingException e) {
        String pointer = pointer(e);
        if (e instanceof MismatchedInputException mismatch && mismatch.getTargetType() != null) {
            return Fault.at(pointer, "wrong-type", "This value has the wrong type" + place(e) + ".")
                    .withAllowed(expected(mismatch.getTargetType()));
        }
        String detail = "This value cannot be read" + place(e) + ".";
        return Fault.at(pointer, "unreadable-value", detail);
    }

    static Fault unknownName(String pointer, String name, Collection<String> known) {
        return Fault.at(pointer, "unknown-name", "There is no member of this name.")
                .withGot(name)
                .withAllowed(known.isEmpty() ? null : String.join(", ", known))
                .withHint(Nearest.hint(name, known));
    }

    static Fault wrongType(String pointer, Class<?> type, JsonToken token, String text) {
        String got = switch (token) {
            case START_OBJECT, FIELD_NAME, END_OBJECT -> "an object";
            case START_ARRAY, END_ARRAY -> "an array";
            case VALUE_STRING -> '"' + text + '"';
            default -> text;
        };
        return Fault.at(pointer, "wrong-type", "This value has the wrong type.")
                .withGot(got)
                .withAllowed(expected(type));
    }

    static Fault wrongText(String pointer, Class<?> type, String text, String message) {
        Fault fault = Fault.at(pointer, "wrong-value", "This value is not understood.")
                .withGot('"' + text + '"');
        if (!type.isEnum()) {
            return fault.withAllowed(expected(type));
        }
        int open = message.indexOf('[');
        int close = message.lastIndexOf(']');
        return open < 0 || close < open ? fault : fault.withAllowed(message.substring(open + 1, close));
    }

    private static String expected(Class<?> type) {
        if (type == String.class || type.isEnum()) {
            return "a string";
        }
        if (type == Boolean.class || type == boolean.class) {
            return "true or false";
        }
        if (type == Integer.class || type == int.class || type == Long.class || type == long.class) {
            return "a whole number";
        }
        if (Number.class.isAssignableFrom(type) || type.isPrimitive()) {
            return "a number";
        }
        return type.isArray() || Collection.class.isAssignableFrom(type) ? "an array" : "an object";
    }

    private static String pointer(JsonMappingException e) {
        String result = Pointer.ROOT;
        for (JsonMappingException.Reference at : e.getPath()) {
            result = at.getFieldName() == null
                    ? Pointer.child(result, Math.max(0, at.getIndex()))
                    : Pointer.child(result, at.getFieldName());
        }
        return result;
    }

    private static String place(JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        return at == null || at.getLineNr() < 0
                ? ""
                : String.format(Locale.ROOT, " at line %d, column %d", at.getLineNr(), at.getColumnNr());
    }
}
