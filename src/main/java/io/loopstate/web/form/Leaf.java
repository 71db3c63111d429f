package io.loopstate.web.form;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Optional;

/** One value of a reply. */
public final class Leaf {
    private final Trail trail;
    private final JsonNode value;
    private final Optional<String> unit;

    /** A value at the end of a trail, with a unit where it is a quantity. */
    Leaf(Trail trail, JsonNode value, Optional<String> unit) {
        this.trail = trail;
        this.value = value;
        this.unit = unit;
    }

    /** Names that lead to it; elements of an array go by their own name where they have one, by their index otherwise. */
    public List<String> path() {
        return trail.path();
    }

    /** Number, text or truth value. */
    public JsonNode value() {
        return value;
    }

    /** Unit of a quantity. */
    public Optional<String> unit() {
        return unit;
    }

    /** The path as one name. */
    public String name() {
        return FlatName.of(path());
    }

    /** The name with the unit: the head of a column. */
    public String header() {
        return unit.map(token -> name() + '_' + token).orElseGet(this::name);
    }

    /** RFC 6901 pointer. */
    JsonPointer pointer() {
        return trail.pointer();
    }

    /** Its number alone. */
    Leaf withoutUnit() {
        return new Leaf(trail, value, Optional.empty());
    }

    /** Its unit as a value; only for a quantity. */
    Leaf itsUnit() {
        return new Leaf(trail.member("unit"), TextNode.valueOf(unit.orElseThrow()), Optional.empty());
    }

    /** The first name of its path. */
    String first() {
        return trail.first();
    }

    /** The last name of its path. */
    String last() {
        return trail.last();
    }

    /** Whether this is its name. */
    boolean named(String wanted) {
        String last = trail.last();
        return wanted.regionMatches(true, wanted.length() - last.length(), last, 0, last.length())
                && wanted.equals(name());
    }

    /** Whether a name means this value: all of its path, as one name or with dots, or the end of its path. */
    boolean endsWith(String wanted) {
        if (!wanted.endsWith(trail.last())) {
            return false;
        }
        String dotted = String.join(".", path());
        return dotted.equals(wanted) || dotted.endsWith('.' + wanted);
    }
}
