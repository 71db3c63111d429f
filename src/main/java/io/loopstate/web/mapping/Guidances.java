package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.Limit;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Limits of a request in place of those of common practice; each has the name of its guideline. */
final class Guidances {
    private static final String BASIS = "limit given in the request";
    private static final Pattern WORD = Pattern.compile("_(.)");

    private Guidances() {}

    static Guidance of(Input<?> input) {
        Guidance guidance = Guidance.common();
        for (Guideline guideline : Guideline.values()) {
            String path = path(guideline);
            if (input.shape().leaves().containsKey(path)) {
                OptionalDouble limit = input.si(path);
                guidance =
                        limit.isPresent() ? guidance.with(guideline, new Limit(limit.getAsDouble(), BASIS)) : guidance;
            }
        }
        return guidance;
    }

    private static String path(Guideline guideline) {
        String name = guideline.name().toLowerCase(Locale.ROOT);
        return "limits." + WORD.matcher(name).replaceAll(word -> word.group(1).toUpperCase(Locale.ROOT));
    }
}
