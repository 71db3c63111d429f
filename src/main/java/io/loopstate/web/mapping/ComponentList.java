package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * A composition as a list in a body, {@code [{"refrigerant": "R-32", "massFraction": 0.689}, ...]}, read as the notation that
 * says the same, so that there is one way on from here.
 */
final class ComponentList {
    static final String ALLOWED = "a string, or a list of {\"refrigerant\": text, \"massFraction\": number}";
    private static final String REFRIGERANT = "refrigerant";
    private static final String MASS_FRACTION = "massFraction";

    private ComponentList() {}

    /** The notation; empty where an element is no component. */
    static Optional<String> notation(JsonNode list) {
        StringJoiner names = new StringJoiner("/");
        StringJoiner percents = new StringJoiner("/");
        for (JsonNode element : list) {
            JsonNode name = element.path(REFRIGERANT);
            JsonNode share = element.path(MASS_FRACTION);
            if (element.size() != 2 || !named(name) || !share.isNumber() || !Double.isFinite(share.doubleValue())) {
                return Optional.empty();
            }
            names.add(name.textValue());
            percents.add(share.decimalValue().movePointRight(2).toPlainString());
        }
        return list.size() < 2 ? Optional.empty() : Optional.of(names + " (" + percents + ')');
    }

    private static boolean named(JsonNode name) {
        return name.isTextual() && name.textValue().indexOf('/') < 0;
    }
}
