package io.loopstate.web.form;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;

/**
 * One value of a reply.
 *
 * @param path names that lead to it; elements of an array go by their own name where they have one, by their index otherwise
 * @param pointer RFC 6901 pointer
 * @param value number, text or truth value
 * @param unit of a quantity
 */
public record Leaf(List<String> path, JsonPointer pointer, JsonNode value, Optional<String> unit) {
    /** Copies the path. */
    public Leaf {
        path = List.copyOf(path);
    }

    /** The path as one name. */
    public String name() {
        return FlatName.of(path);
    }

    /** The name with the unit: the head of a column. */
    public String header() {
        return unit.map(token -> name() + '_' + token).orElseGet(this::name);
    }

    /** Whether a name means this value: all of its path, as one name or with dots, or the end of its path. */
    boolean endsWith(String wanted) {
        String dotted = String.join(".", path);
        return dotted.equals(wanted) || dotted.endsWith('.' + wanted);
    }
}
