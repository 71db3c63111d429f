package io.loopstate.web.mapping;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers and messages inside sentences. Numbers that are results are never rounded. */
final class Words {
    private static final int DIGITS = 6;

    private Words() {}

    /** A message with a capital letter and a full stop. */
    static String sentence(String message) {
        String capital = message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1);
        return capital.endsWith(".") ? capital : capital + '.';
    }

    /** Six digits. */
    static String brief(double value) {
        return rounded(value, RoundingMode.HALF_EVEN);
    }

    /** Six digits, never below the value: a lower limit that is printed is itself allowed. */
    static String lower(double value) {
        return rounded(value, RoundingMode.CEILING);
    }

    /** Six digits, never above the value. */
    static String upper(double value) {
        return rounded(value, RoundingMode.FLOOR);
    }

    private static String rounded(double value, RoundingMode mode) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        // The shortest decimal of the double, so that 0.1 does not become 0.100001.
        BigDecimal rounded = new BigDecimal(Double.toString(value)).round(new MathContext(DIGITS, mode));
        if (rounded.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = rounded.stripTrailingZeros();
        int magnitude = stripped.precision() - stripped.scale();
        return magnitude > 9 || magnitude < -4 ? stripped.toString() : stripped.toPlainString();
    }
}
