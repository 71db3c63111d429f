package io.loopstate.web.mapping;

import io.loopstate.web.form.FlatName;
import io.loopstate.web.problem.Pointer;
import java.util.List;

/** Paths of members, {@code evaporating.temperature}, in the forms that clients see. */
final class Paths {
    private Paths() {}

    static String child(String parent, String name) {
        return parent.isEmpty() ? name : parent + '.' + name;
    }

    /** Empty for a member of the request itself. */
    static String parent(String path) {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    /** The last name of a path. */
    static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** The name in a query: {@code evaporatingTemperature}. */
    static String flat(String path) {
        return FlatName.of(List.of(path.split("\\.")));
    }

    /** The place in a body: {@code #/evaporating/temperature}. */
    static String pointer(String path) {
        String pointer = Pointer.ROOT;
        if (!path.isEmpty()) {
            for (String part : path.split("\\.")) {
                pointer = Pointer.child(pointer, part);
            }
        }
        return pointer;
    }
}
