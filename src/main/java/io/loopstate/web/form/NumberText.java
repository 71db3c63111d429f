package io.loopstate.web.form;

import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.OptionalInt;

/** Numbers as a spreadsheet of any language reads them: digits, a decimal mark, a sign, an exponent only where it has to be. */
public final class NumberText {
    /** Beyond so many places a number is written with an exponent. */
    private static final int MOST_PLACES = 20;

    private NumberText() {}

    /** A number with at most so many significant digits. */
    public static String of(JsonNode number, OptionalInt digits, char decimalMark) {
        String text = digits.isEmpty() && number.isFloatingPointNumber() ? asItIs(number) : of(rounded(number, digits));
        return decimalMark == '.' ? text : text.replace('.', decimalMark);
    }

    /** Mostly the shortest decimal itself. */
    private static String asItIs(JsonNode number) {
        String shortest = shortest(number);
        if (shortest.indexOf('E') >= 0 || number.doubleValue() == 0) {
            return of(new BigDecimal(shortest));
        }
        return shortest.endsWith(".0") ? shortest.substring(0, shortest.length() - 2) : shortest;
    }

    private static String of(BigDecimal number) {
        BigDecimal value = number.stripTrailingZeros();
        boolean plain = value.scale() > -MOST_PLACES && value.scale() < MOST_PLACES;
        return value.signum() == 0 ? "0" : plain ? value.toPlainString() : value.toString();
    }

    /** The shortest decimal that reads back; BigDecimal(double) would show the binary fraction. */
    private static String shortest(JsonNode number) {
        return NumberOutput.toString(number.doubleValue(), true);
    }

    /** The number that is written. */
    static BigDecimal rounded(JsonNode number, OptionalInt digits) {
        BigDecimal exact =
                number.isIntegralNumber() ? new BigDecimal(number.bigIntegerValue()) : new BigDecimal(shortest(number));
        return digits.isPresent() ? exact.round(new MathContext(digits.getAsInt(), RoundingMode.HALF_EVEN)) : exact;
    }
}
