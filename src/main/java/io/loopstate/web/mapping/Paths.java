package io.loopstate.web.mapping;

import io.loopstate.web.form.FlatName;
import io.loopstate.web.problem.Pointer;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Paths of members, {@code evaporating.temperature}, in the forms that clients see. */
final class Paths {
    /** Those of the members that requests have; what clients make up is worked out each time. */
    private static final Map<String, Forms> OF_MEMBERS = new ConcurrentHashMap<>();

    /** One path in every form. */
    private record Forms(String flat, String pointer) {
        static Forms of(String path) {
            List<String> names = path.isEmpty() ? List.of() : List.of(path.split("\\.", -1));
            String pointer = Pointer.ROOT;
            for (String name : names) {
                pointer = Pointer.child(pointer, name);
            }
            return new Forms(FlatName.of(names), pointer);
        }
    }

    private Paths() {}

    /** Keeps the forms of a member's path. */
    static void keep(String path) {
        OF_MEMBERS.computeIfAbsent(path, Forms::of);
    }

    private static Forms forms(String path) {
        Forms kept = OF_MEMBERS.get(path);
        return kept == null ? Forms.of(path) : kept;
    }

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
        return forms(path).flat();
    }

    /** The place in a body: {@code #/evaporating/temperature}. */
    static String pointer(String path) {
        return forms(path).pointer();
    }
}
