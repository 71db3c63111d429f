package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A value as the client gave it. Values of a query are text, whatever they stand for.
 *
 * @param node the value
 * @param place where it stands
 */
record Given(JsonNode node, Place place) {
    /** The value in short, for a fault of its type: text in a body shows its quotes. */
    String typed() {
        return node.isTextual() && !place.inQuery() ? '"' + node.textValue() + '"' : words();
    }

    /** The value in short, for a fault. */
    String words() {
        if (node.isObject()) {
            boolean quantity =
                    node.path("value").isNumber() && node.path("unit").isTextual();
            return quantity
                    ? node.get("value").asText() + ' ' + node.get("unit").textValue()
                    : "an object";
        }
        if (node.isArray()) {
            return "an array of " + node.size() + (node.size() == 1 ? " value" : " values");
        }
        return node.asText();
    }
}
