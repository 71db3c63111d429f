package io.loopstate.web.page;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.UnitsReply;
import io.loopstate.web.form.NumberText;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Names, units and numbers of a reply as a person reads them. */
final class Labels {
    /** What stands where a row has no such value. */
    static final String NOTHING = "–";

    private final Map<String, String> symbols = new HashMap<>();

    Labels(UnitsReply units) {
        units.kinds().forEach(kind -> kind.units().forEach(unit -> symbols.put(unit.unit(), unit.symbol())));
    }

    /** The printed symbol of a unit; the token where it has none. */
    String symbol(String token) {
        return symbols.getOrDefault(token, token);
    }

    /** {@code isentropicEfficiency} as "Isentropic efficiency". */
    static String words(String name) {
        String spaced =
                name.replaceAll("([a-z0-9])([A-Z])", "$1 $2").replace('_', ' ').toLowerCase(Locale.ROOT);
        return spaced.substring(0, 1).toUpperCase(Locale.ROOT) + spaced.substring(1);
    }

    /** Whether a value is a number with a unit. */
    static boolean quantity(JsonNode value) {
        return value.has("value") && value.has("unit");
    }

    /** The number of a value, without its unit. */
    static String number(JsonNode value) {
        JsonNode number = quantity(value) ? value.get("value") : value;
        return NumberText.of(number, OptionalInt.empty(), '.').replace('-', '−');
    }

    /** A value with its unit, or in words. */
    String text(JsonNode value) {
        if (value.isMissingNode() || value.isNull()) {
            return NOTHING;
        }
        if (quantity(value)) {
            return number(value) + ' ' + symbol(value.get("unit").asText());
        }
        if (value.isArray()) {
            return StreamSupport.stream(value.spliterator(), false)
                    .map(JsonNode::asText)
                    .collect(Collectors.joining("; "));
        }
        return value.isNumber() ? number(value) : word(value.asText());
    }

    /** A name of a list in words; designations and sentences stay. */
    private static String word(String text) {
        return text.matches("[a-z]+([A-Z][a-z]+)*") ? words(text) : text;
    }
}
