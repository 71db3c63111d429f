package io.loopstate.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A product or quotient of units under a key that does not depend on the order of its factors nor on how each of them
 * is spelled, so that {@code Btu/h-ft2-F}, {@code BTU/(hr·ft²·°F)} and {@code Btu_per_h_ft2_degF} are one.
 */
final class Product {
    private static final Pattern SEPARATORS = Pattern.compile("[ ./*()-]+");
    private static final Pattern TOKEN_SEPARATORS = Pattern.compile("[_/]+");
    private static final Map<String, String> FACTORS = new HashMap<>();

    static {
        factor("s", "sec", "second", "seconds");
        factor("min", "minute", "minutes");
        factor("h", "hr", "hrs", "hour", "hours");
        factor("kg", "kilogram", "kilograms");
        factor("lb", "lbs", "lbm", "[lb_av]", "pound", "pounds");
        factor("lbf", "[lbf_av]");
        factor("gr", "grain", "grains", "[gr]");
        factor("m", "meter", "metre");
        factor("m2", "m^2", "sqm");
        factor("m3", "m^3", "cbm");
        factor("cm3", "cm^3", "cc", "ml");
        factor("l", "liter", "litre", "liters", "litres", "dm3");
        factor("ft", "[ft_i]", "foot", "feet");
        factor("ft2", "ft^2", "sqft", "[ft_i]2", "[sft_i]");
        factor("ft3", "ft^3", "cuft", "cf", "[ft_i]3", "[cft_i]");
        factor("inch", "in", "[in_i]", "inches");
        factor("in2", "in^2", "sqin", "[in_i]2", "[sin_i]");
        factor("in3", "in^3", "cuin", "[in_i]3", "[cin_i]");
        factor("gal", "gallon", "gallons", "[gal_us]");
        factor("btu", "btu_it", "[btu_it]");
        factor("kcal", "kcal_it");
        factor("psi", "[psi]");
        // Inside a product a degree is always a step and never a point on a scale.
        factor("k", "c", "°c", "degc", "cel", "delta_k", "delta_degc");
        factor("degf", "f", "°f", "[degf]", "delta_degf", "r", "°r", "degr", "[degr]", "delta_degr");
    }

    private Product() {}

    private static void factor(String canonical, String... spellings) {
        for (String spelling : spellings) {
            FACTORS.put(spelling, canonical);
        }
    }

    /** Whether a normalized spelling is a product or a quotient. */
    static boolean is(String normalized) {
        return normalized.indexOf('/') >= 0
                || normalized.indexOf('.') >= 0
                || normalized.contains("_per_")
                || normalized.contains(" per ");
    }

    /**
     * The key of a normalized spelling. Everything after the first stroke is taken as denominator, as the trade writes
     * it: {@code Btu/h-ft2-F}, {@code kJ/kg K}.
     */
    static String key(String normalized) {
        String text = Spelling.lower(normalized);
        boolean token = text.contains("_per_");
        text = text.replace("_per_", "/").replace(" per ", "/");
        Pattern separators = token ? TOKEN_SEPARATORS : SEPARATORS;
        int stroke = text.indexOf('/');
        if (stroke < 0) {
            return sorted(text, separators);
        }
        String numerator = text.substring(0, stroke).strip();
        return (numerator.equals("1") ? "" : sorted(numerator, separators)) + "/"
                + sorted(text.substring(stroke + 1), separators);
    }

    private static String sorted(String product, Pattern separators) {
        List<String> factors = new ArrayList<>();
        for (String factor : separators.split(product)) {
            if (!factor.isEmpty()) {
                factors.add(FACTORS.getOrDefault(factor, factor));
            }
        }
        factors.sort(null);
        return String.join(".", factors);
    }
}
