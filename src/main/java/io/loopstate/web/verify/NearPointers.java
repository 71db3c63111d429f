package io.loopstate.web.verify;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.problem.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where a pointer that leads nowhere was probably meant to lead. */
final class NearPointers {
    private static final int MOST_NAMES = 12;

    private NearPointers() {}

    /** A sentence about the pointer and what would have been there. */
    static String message(JsonNode reply, JsonPointer pointer) {
        String text = pointer.toString();
        String nothing = "Nothing is at " + text + ". ";
        JsonNode here = reply;
        JsonPointer at = pointer;
        StringBuilder parent = new StringBuilder();
        while (!at.matches() && !here.at(head(at)).isMissingNode()) {
            here = here.at(head(at));
            parent.append(head(at));
            at = at.tail();
        }
        String name = at.getMatchingProperty();
        List<String> names = names(here);
        String rest = at.tail() == null ? "" : at.tail().toString();
        Optional<String> near = Nearest.to(name, names);
        if (near.isPresent()) {
            return nothing + "Did you mean " + parent + '/' + escape(near.get()) + rest + "?";
        }
        List<String> elsewhere = elsewhere(reply, pointer.last().getMatchingProperty());
        if (!elsewhere.isEmpty()) {
            return nothing + "Did you mean " + String.join(" or ", elsewhere) + "?";
        }
        return nothing + (names.isEmpty() ? parent + " has nothing below it." : present(parent, here, names));
    }

    private static String present(CharSequence parent, JsonNode here, List<String> names) {
        String place = parent.length() == 0 ? "The reply" : parent.toString();
        if (here.isArray()) {
            return place + " has the elements 0 to " + (here.size() - 1) + ".";
        }
        String more = names.size() > MOST_NAMES ? ", ..." : "";
        return place + " has " + String.join(", ", names.subList(0, Math.min(MOST_NAMES, names.size()))) + more + ".";
    }

    private static JsonPointer head(JsonPointer pointer) {
        return JsonPointer.compile('/' + escape(pointer.getMatchingProperty()));
    }

    private static String escape(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        for (int i = 0; i < node.size() && node.isArray(); i++) {
            names.add(Integer.toString(i));
        }
        return names;
    }

    /** The first places, not within lists, whose last name is this one. */
    private static List<String> elsewhere(JsonNode reply, String name) {
        Set<String> all = new LinkedHashSet<>();
        collect(reply, "", name, all);
        return all.stream().limit(3).toList();
    }

    private static void collect(JsonNode node, String place, String name, Set<String> found) {
        node.fields().forEachRemaining(field -> {
            String here = place + '/' + escape(field.getKey());
            if (field.getKey().equalsIgnoreCase(name)) {
                found.add(here);
            }
            collect(field.getValue(), here, name, found);
        });
        if (node.isArray() && !node.isEmpty()) {
            collect(node.get(0), place + "/0", name, found);
        }
    }
}
