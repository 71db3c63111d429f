package io.loopstate.engine.fluid;

import io.loopstate.engine.fluid.CompositionException.Reason;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Components and mass fractions as a caller states them, not yet checked; {@link Catalog#mixture(Composition)} checks them.
 *
 * @param designations of the components
 * @param massFractions kg/kg, one for each of them
 */
public record Composition(List<String> designations, List<Double> massFractions) {
    private static final String FORM =
            "components, then their mass percents in the same order, such as R-32/1234yf (68.9/31.1)";
    /** No notation of ten components is longer. */
    private static final int LONGEST = 500;
    /** An optional sign so that a negative number is told apart from what is none. */
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,4}(\\.[0-9]{1,30})?");

    private static final int MOST_DIGITS = 17;

    public Composition {
        designations = List.copyOf(designations);
        massFractions = List.copyOf(massFractions);
    }

    /** Whether a text is meant as a composition and not as a designation or name. */
    public static boolean looksLike(String text) {
        return text.indexOf('/') >= 0;
    }

    /**
     * The notation of ASHRAE Standard 34, {@code R-32/1234yf (68.9/31.1)}: mass percents in the order of the components. The
     * R and spaces are optional.
     *
     * @throws CompositionException NOT_READABLE
     */
    public static Composition parse(String text) {
        String trimmed = text.strip();
        int open = trimmed.lastIndexOf('(');
        if (trimmed.length() > LONGEST || open <= 0 || !trimmed.endsWith(")")) {
            throw notReadable("this composition cannot be read", text);
        }
        List<String> names = parts(trimmed.substring(0, open));
        List<String> percents = parts(trimmed.substring(open + 1, trimmed.length() - 1));
        percents.stream()
                .filter(percent -> !NUMBER.matcher(percent).matches())
                .findFirst()
                .ifPresent(percent -> {
                    throw notReadable("a mass percent of this composition is no number: \"" + percent + '"', text);
                });
        if (names.size() != percents.size()) {
            throw notReadable("there are " + names.size() + " components and " + percents.size() + " percents", text);
        }
        if (names.contains("")) {
            throw notReadable("a component of this composition has no designation", text);
        }
        return new Composition(
                names,
                percents.stream()
                        .map(percent -> new BigDecimal(percent).movePointLeft(2).doubleValue())
                        .toList());
    }

    private static List<String> parts(String text) {
        List<String> parts = new ArrayList<>();
        for (String part : text.split("/", -1)) {
            parts.add(part.strip());
        }
        return parts;
    }

    private static CompositionException notReadable(String message, String text) {
        String got = text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
        return new CompositionException(Reason.NOT_READABLE, message, got, FORM, List.of());
    }

    /** The canonical notation: the leading R once, mass percents in the shortest decimals that read back. */
    static String notation(List<Mixture.Component> components) {
        String names = components.stream()
                .map(c -> c.fluid().designation())
                .map(name -> name.startsWith("R-") ? name.substring(2) : name)
                .collect(Collectors.joining("/"));
        String percents = components.stream()
                .map(c -> decimal(c.massFraction()).movePointRight(2))
                .map(percent -> percent.stripTrailingZeros().toPlainString())
                .collect(Collectors.joining("/"));
        return "R-" + names + " (" + percents + ")";
    }

    /** The shortest decimal that reads back; the same on every JDK, which {@code Double.toString} is not. */
    static BigDecimal decimal(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == value) {
                return rounded;
            }
        }
        return exact.round(new MathContext(MOST_DIGITS));
    }
}
