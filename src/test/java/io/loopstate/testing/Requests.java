package io.loopstate.testing;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** One request in its two forms. Names are paths with dots, values text as a query has it. */
public record Requests(Map<String, String> values) {

    /** The flattened names of a query. */
    public Map<String, String> query() {
        Map<String, String> query = new LinkedHashMap<>();
        values.forEach((path, value) -> {
            StringBuilder name = new StringBuilder();
            for (String part : path.split("\\.")) {
                name.append(name.isEmpty() ? part : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
            }
            query.put(name.toString(), value);
        });
        return query;
    }

    /** The nested members of a body; quantities become objects, plain numbers and truths what they are. */
    public ObjectNode body() {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        values.forEach((path, value) -> {
            ObjectNode owner = body;
            String[] parts = path.split("\\.");
            for (int i = 0; i < parts.length - 1; i++) {
                owner = owner.has(parts[i]) ? (ObjectNode) owner.get(parts[i]) : owner.putObject(parts[i]);
            }
            put(owner, parts[parts.length - 1], value);
        });
        return body;
    }

    private static void put(ObjectNode owner, String name, String value) {
        String[] words = value.split(" ", 2);
        if (value.matches("-?[0-9.E-]+ [A-Za-z_0-9]+")) {
            owner.putObject(name).put("value", Double.parseDouble(words[0])).put("unit", words[1]);
        } else if (value.matches("-?[0-9.]+(E-?[0-9]+)?")) {
            owner.put(name, Double.parseDouble(value));
        } else if (value.equals("true") || value.equals("false")) {
            owner.put(name, Boolean.parseBoolean(value));
        } else {
            owner.put(name, value);
        }
    }
}
