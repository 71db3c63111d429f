package io.loopstate.units;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers inside sentences. Numbers that are results are never rounded. */
final class Numbers {
    private static final MathContext SENTENCE = new MathContext(6);

    private Numbers() {}

    /** Six significant digits at most, no trailing zeros; powers of ten only for very large or small numbers. */
    static String brief(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(SENTENCE);
        if (rounded.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = rounded.stripTrailingZeros();
        int magnitude = stripped.precision() - stripped.scale();
        return magnitude > 9 || magnitude < -4 ? stripped.toString() : stripped.toPlainString();
    }
}
