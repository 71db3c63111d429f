package io.loopstate.units;

import java.util.Locale;

/**
 * Reads the decimal number at the head of a text: sign, ASCII digits, one decimal mark, power of ten. Everything that
 * could be read in two ways is refused.
 */
final class NumberText {
    private static final String IN_QUERY = "In a query + stands for a space; a plus sign is written %2B.";

    private final String text;
    private final DecimalMark mark;
    private final String got;
    private int position;

    /** The number and what follows it. */
    record Head(double value, String rest) {}

    private NumberText(String text, DecimalMark mark, String got) {
        this.text = text;
        this.mark = mark;
        this.got = got;
    }

    /**
     * Reads the head.
     *
     * @param text normalized by {@link Spelling#normalize}
     * @param got the quantity as given, for faults
     */
    static Head read(String text, DecimalMark mark, String got) {
        return new NumberText(text, mark, got).head();
    }

    private Head head() {
        boolean negative = at(0) == '-';
        if (negative || at(0) == '+') {
            position = 1;
            while (at(position) == ' ') {
                position++;
            }
        }
        int start = position;
        skipDigits();
        int digits = position - start;
        if (at(position) == mark.character() && (digits > 0 || isDigit(at(position + 1)))) {
            position++;
            int fraction = position;
            skipDigits();
            digits += position - fraction;
        }
        if (digits == 0) {
            throw noNumber(text.substring(start));
        }
        String mantissa = text.substring(start, position).replace(',', '.');
        String exponent = exponent();
        refuseContinuation(start);
        double value = value(mantissa, exponent);
        return new Head(negative ? -value : value, text.substring(position));
    }

    private String exponent() {
        int start = position;
        if (at(start) != 'e' && at(start) != 'E') {
            return "";
        }
        int first = at(start + 1) == '-' || at(start + 1) == '+' ? start + 2 : start + 1;
        if (!isDigit(at(first))) {
            return "";
        }
        position = first;
        skipDigits();
        return text.substring(start, position);
    }

    private double value(String mantissa, String exponent) {
        double value = Double.parseDouble(mantissa + exponent);
        if (Double.isInfinite(value) || value == 0.0 && !mantissa.chars().allMatch(c -> c == '0' || c == '.')) {
            String size = value == 0.0 ? "small" : "large";
            throw fault(UnitFaultCode.NUMBER_NOT_FINITE, "The number is too " + size + ".", "");
        }
        return value;
    }

    private char at(int index) {
        return index < text.length() ? text.charAt(index) : '\0';
    }

    private void skipDigits() {
        while (isDigit(at(position))) {
            position++;
        }
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private UnitFault noNumber(String unsigned) {
        String lower = unsigned.toLowerCase(Locale.ROOT);
        if (lower.startsWith("nan") || lower.startsWith("inf") || lower.startsWith("∞")) {
            return fault(UnitFaultCode.NUMBER_NOT_FINITE, "Only finite numbers are taken.", "");
        }
        if (unsigned.isEmpty()) {
            return fault(UnitFaultCode.NUMBER_MISSING, "There is no number.", "");
        }
        if (Character.isDigit(unsigned.codePointAt(0))) {
            return fault(UnitFaultCode.NUMBER_MALFORMED, "Only the digits 0 to 9 are taken.", "");
        }
        return fault(
                UnitFaultCode.NUMBER_MISSING,
                "There is no number at the beginning.",
                "Write the number first, then its unit.");
    }

    /** What follows the number must not look like more of the number. */
    private void refuseContinuation(int start) {
        char next = at(position);
        char afterNext = at(position + 1);
        if ((next == 'e' || next == 'E') && afterNext == ' ' && isDigit(at(position + 2))) {
            throw fault(UnitFaultCode.NUMBER_MALFORMED, "The power of ten is broken by a space.", IN_QUERY);
        }
        if ((next == 'x' || next == 'X') && Character.digit(afterNext, 16) >= 0) {
            throw fault(UnitFaultCode.NUMBER_MALFORMED, "Only decimal numbers are taken.", "");
        }
        int digit = position;
        while (isSeparator(at(digit))) {
            digit++;
        }
        if (digit > position && isDigit(at(digit)) && !isReciprocalUnit(digit)) {
            throw separators(start);
        }
    }

    /** The unit {@code 1/K} after a space. */
    private boolean isReciprocalUnit(int digit) {
        return at(digit) == '1'
                && at(digit + 1) == '/'
                && text.substring(position, digit).isBlank();
    }

    private static boolean isSeparator(char c) {
        return c == ',' || c == '.' || c == ' ' || c == '\'' || c == '_';
    }

    private UnitFault separators(int start) {
        int end = position;
        while (isDigit(at(end)) || isSeparator(at(end))) {
            end++;
        }
        String region = text.substring(start, end).strip();
        String separators = region.replaceAll("[0-9]", "");
        if (separators.length() == 1 && separators.charAt(0) != mark.character() && ",.".contains(separators)) {
            return otherMark(region);
        }
        if (!region.matches("[0-9]{1,3}([., '_][0-9]{2,3})*[., '_][0-9]{3}([.,][0-9]+)?")) {
            return fault(UnitFaultCode.NUMBER_MALFORMED, "This is not one decimal number.", "");
        }
        return fault(
                UnitFaultCode.GROUPING_SEPARATOR,
                "Digits must not be grouped.",
                "Write " + ungrouped(region, separators) + " if that is meant.");
    }

    /** The same digits, with a decimal mark only where the last separator differs from those before it. */
    private String ungrouped(String region, String separators) {
        int last = separators.length() - 1;
        int point = region.lastIndexOf(separators.charAt(last));
        boolean fraction = last > 0 && separators.charAt(last) != separators.charAt(last - 1);
        return fraction
                ? digits(region.substring(0, point)) + mark.character() + digits(region.substring(point))
                : digits(region);
    }

    private static String digits(String text) {
        return text.replaceAll("[^0-9]", "");
    }

    private UnitFault otherMark(String region) {
        if (mark == DecimalMark.COMMA) {
            return fault(
                    UnitFaultCode.DECIMAL_POINT,
                    "A decimal comma was declared, but the number has a point.",
                    "Write " + region.replace('.', ',') + ", or leave out dec=,.");
        }
        boolean thousands = region.matches("[0-9]{1,3},[0-9]{3}");
        String either = thousands ? region.replace(",", "") + " or " : "";
        return fault(
                UnitFaultCode.DECIMAL_COMMA,
                "The decimal mark is a point, the number has a comma.",
                "Write " + either + region.replace(',', '.') + ", or declare the decimal comma with dec=,.");
    }

    private UnitFault fault(UnitFaultCode code, String message, String hint) {
        String example = mark == DecimalMark.COMMA ? "41,5 or 1e3" : "41.5 or 1e3";
        return UnitFault.of(code, message, got, "a plain decimal number such as " + example, hint);
    }
}
