package io.loopstate.units;

import java.util.List;
import java.util.function.Supplier;

/**
 * Reads quantities: {@code "118 psig"}, {@code "41.5 degF"}, {@code "-40°C"}, {@code "70 %"}.
 *
 * <p>Time is bounded by the length limit. Every refusal is a {@link UnitFault}.
 */
public final class QuantityParser {
    /** Longest text taken, in UTF-16 units. */
    public static final int MAX_LENGTH = 64;

    private QuantityParser() {}

    /**
     * Reads a number with a decimal point and its unit.
     *
     * @throws UnitFault whatever is wrong with it
     */
    public static Reading parse(QuantityKind kind, String text) {
        return parse(kind, text, DecimalMark.POINT);
    }

    /**
     * Reads a number and its unit. The unit may be a canonical token, a symbol, a UCUM code or one of the spellings in
     * the {@link UnitCatalog}; a {@link QuantityKind#RATIO} needs none.
     *
     * @throws UnitFault whatever is wrong with it
     */
    public static Reading parse(QuantityKind kind, String text, DecimalMark mark) {
        String got = checkLength(text);
        NumberText.Head head = NumberText.read(Spelling.normalize(got), mark, got);
        return new Reading(kind, head.value(), unit(kind, head.value(), head.rest(), () -> got));
    }

    /**
     * Takes a number and its unit that arrive apart.
     *
     * @param unit may be null or empty where there is none
     * @throws UnitFault whatever is wrong with it
     */
    public static Reading parse(QuantityKind kind, double value, String unit) {
        String unitText = unit == null ? "" : checkLength(unit);
        if (!Double.isFinite(value)) {
            throw UnitFault.of(
                    UnitFaultCode.NUMBER_NOT_FINITE,
                    "Only finite numbers are taken.",
                    Double.toString(value),
                    "a finite number",
                    "");
        }
        Supplier<String> got = () -> (value + " " + unitText).strip();
        return new Reading(kind, value, unit(kind, value, Spelling.normalize(unitText), got));
    }

    private static String checkLength(String text) {
        if (text == null) {
            return "";
        }
        if (text.length() > MAX_LENGTH) {
            throw UnitFault.of(
                    UnitFaultCode.TEXT_TOO_LONG,
                    "The text has " + text.length() + " characters.",
                    text.substring(0, MAX_LENGTH),
                    "at most " + MAX_LENGTH + " characters",
                    "Write a number and its unit, for example \"118 psig\".");
        }
        return text;
    }

    private static UnitToken unit(QuantityKind kind, double value, String rest, Supplier<String> got) {
        String unitText = rest.strip();
        if (!unitText.isEmpty()) {
            return UnitLookup.find(kind, unitText, got);
        }
        if (kind == QuantityKind.RATIO) {
            return kind.replyUnit(UnitSystem.SI);
        }
        List<String> examples = Plausibility.likely(kind, value).stream()
                .map(unit -> "\"" + Numbers.brief(value) + " " + unit + "\"")
                .toList();
        throw UnitFault.of(
                UnitFaultCode.UNIT_MISSING,
                "The number has no unit; a " + kind.words() + " needs one.",
                got.get(),
                UnitLookup.list(kind),
                "Write for example " + Nearest.either(examples) + ".");
    }
}
