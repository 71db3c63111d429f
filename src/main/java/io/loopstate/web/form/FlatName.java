package io.loopstate.web.form;

import java.util.List;
import java.util.Locale;

/** Nested names as one: {@code evaporating}, {@code temperature} is {@code evaporatingTemperature}. */
public final class FlatName {
    private FlatName() {}

    /** The name of a path. */
    public static String of(List<String> path) {
        StringBuilder name = new StringBuilder();
        for (String part : path) {
            boolean asIs = name.isEmpty() || part.isEmpty();
            name.append(asIs ? part : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
        }
        return name.toString();
    }
}
