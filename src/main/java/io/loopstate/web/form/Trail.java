package io.loopstate.web.form;

import com.fasterxml.jackson.core.JsonPointer;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * The way to a value of a reply. It shares its beginning with its neighbors and is written out only where someone asks: most
 * values of a reply are neither picked nor named.
 */
final class Trail {
    /** The reply. */
    static final Trail ROOT = new Trail(null, "", "");

    private final Trail owner;
    private final String name;
    private final String token;

    private Trail(Trail owner, String name, String token) {
        this.owner = owner;
        this.name = name;
        this.token = token;
    }

    /** A member. */
    Trail member(String name) {
        return new Trail(this, name, name);
    }

    /** An element of an array under the name that people know it by. */
    Trail element(int index, String name) {
        return new Trail(this, name, Integer.toString(index));
    }

    /** A trail of names alone. */
    static Trail of(String... names) {
        Trail trail = ROOT;
        for (String name : names) {
            trail = trail.member(name);
        }
        return trail;
    }

    /** The names. */
    List<String> path() {
        Deque<String> names = new ArrayDeque<>();
        for (Trail trail = this; trail.owner != null; trail = trail.owner) {
            names.addFirst(trail.name);
        }
        return List.copyOf(names);
    }

    /** The RFC 6901 pointer. */
    JsonPointer pointer() {
        return owner == null ? JsonPointer.empty() : owner.pointer().appendProperty(token);
    }

    /** The last name. */
    String last() {
        return name;
    }

    /** The first name. */
    String first() {
        Trail trail = this;
        while (trail.owner != null && trail.owner.owner != null) {
            trail = trail.owner;
        }
        return trail.name;
    }
}
