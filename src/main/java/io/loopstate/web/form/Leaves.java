package io.loopstate.web.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** The values of a tree in their order. */
public final class Leaves {
    private static final String NAME = "name";

    private final List<Leaf> found = new ArrayList<>();

    private Leaves() {}

    /** Every value below a node. */
    public static List<Leaf> of(JsonNode node) {
        return of(node, Trail.ROOT);
    }

    /** The same below a name. */
    static List<Leaf> of(JsonNode node, Trail owner) {
        Leaves leaves = new Leaves();
        leaves.add(node, owner);
        return leaves.found;
    }

    /** Whether a node is a value with a unit. */
    static boolean quantity(JsonNode node) {
        return node.size() == 2
                && node.path("value").isNumber()
                && node.path("unit").isTextual();
    }

    private void add(JsonNode node, Trail trail) {
        if (quantity(node)) {
            found.add(new Leaf(
                    trail, node.get("value"), Optional.of(node.get("unit").textValue())));
        } else if (node.isObject()) {
            for (Map.Entry<String, JsonNode> member : node.properties()) {
                add(member.getValue(), trail.member(member.getKey()));
            }
        } else if (node.isArray() && plain(node)) {
            found.add(new Leaf(trail, TextNode.valueOf(joined(node)), Optional.empty()));
        } else if (node.isArray()) {
            boolean named = named(node);
            for (int i = 0; i < node.size(); i++) {
                String name = named ? node.get(i).get(NAME).textValue() : Integer.toString(i);
                add(node.get(i), trail.element(i, name));
            }
        } else if (!node.isNull() && !node.isMissingNode()) {
            found.add(new Leaf(trail, node, Optional.empty()));
        }
    }

    /** Whether an array holds words alone, which go into one cell; numbers have cells of their own, written as numbers are. */
    private static boolean plain(JsonNode array) {
        return !array.isEmpty()
                && StreamSupport.stream(array.spliterator(), false)
                        .allMatch(element -> element.isValueNode() && !element.isNumber());
    }

    private static String joined(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .filter(element -> !element.isNull())
                .map(JsonNode::asText)
                .collect(Collectors.joining("; "));
    }

    /** Whether each element has a name of its own. */
    private static boolean named(JsonNode array) {
        Set<String> names = new HashSet<>();
        for (JsonNode element : array) {
            if (!element.path(NAME).isTextual() || !names.add(element.get(NAME).textValue())) {
                return false;
            }
        }
        return true;
    }
}
