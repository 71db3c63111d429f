package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.Limit;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Limits of a request in place of those of common practice; each has the name of its guideline. */
final class Guidances {
    private static final String BASIS = "limit given in the request";
    private static final String RECORD = "limits";
    private static final Pattern WORD = Pattern.compile("_(.)");
    private static final Map<Guideline, String> PATHS = new EnumMap<>(Guideline.class);

    static {
        for (Guideline guideline : Guideline.values()) {
            String name = guideline.name().toLowerCase(Locale.ROOT);
            PATHS.put(
                    guideline,
                    RECORD
                            + '.'
                            + WORD.matcher(name)
                                    .replaceAll(word -> word.group(1).toUpperCase(Locale.ROOT)));
        }
    }

    private Guidances() {}

    static Guidance of(Input<?> input) {
        Guidance guidance = Guidance.common();
        if (!input.givenWithin(RECORD)) {
            return guidance;
        }
        for (Map.Entry<Guideline, String> place : PATHS.entrySet()) {
            if (input.shape().leaves().containsKey(place.getValue())) {
                OptionalDouble limit = input.si(place.getValue());
                guidance = limit.isPresent()
                        ? guidance.with(place.getKey(), new Limit(limit.getAsDouble(), BASIS))
                        : guidance;
            }
        }
        return guidance;
    }
}
