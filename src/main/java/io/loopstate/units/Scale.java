package io.loopstate.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The exact relation of a unit to the SI unit of its kind, {@code SI = (value + shift) * factor}.
 *
 * <p>The factor is kept as the nearest double and its remainder, and sums carry their rounding error along, so that a
 * conversion to SI is the exact one but for its last rounding (error-free transformations: T. J. Dekker, Numerische
 * Mathematik 18 (1971) 224, doi:10.1007/BF01397083). From SI the shift, 273.15 or 459.67, is taken off as the nearest
 * double, so that 273.15 K is 0 degC and not the -2e-14 degC that its binary form would be.
 */
final class Scale {
    private static final MathContext DIGITS = new MathContext(50);

    private final String text;
    // Worked out when first used, most units never are; immutable, so that a race is harmless.
    private Terms terms;

    private record Terms(
            double factor, double factorRest, double inverse, double inverseRest, double shift, double shiftRest) {}

    /** Takes {@code 5/9}, {@code 1000}, {@code 0.159…} or, with the SI value of its zero, {@code 5/9+45967/180}. */
    Scale(String text) {
        this.text = text;
    }

    private Terms terms() {
        Terms known = terms;
        if (known == null) {
            int plus = text.indexOf('+');
            BigDecimal[] fraction = fraction(plus < 0 ? text : text.substring(0, plus));
            BigDecimal[] offset = fraction(plus < 0 ? "0" : text.substring(plus + 1));
            BigDecimal factor = fraction[0].divide(fraction[1], DIGITS);
            BigDecimal inverse = fraction[1].divide(fraction[0], DIGITS);
            BigDecimal shift = offset[0].multiply(fraction[1]).divide(offset[1].multiply(fraction[0]), DIGITS);
            known = new Terms(
                    factor.doubleValue(),
                    rest(factor),
                    inverse.doubleValue(),
                    rest(inverse),
                    shift.doubleValue(),
                    rest(shift));
            terms = known;
        }
        return known;
    }

    private static BigDecimal[] fraction(String text) {
        int slash = text.indexOf('/');
        return slash < 0
                ? new BigDecimal[] {new BigDecimal(text), BigDecimal.ONE}
                : new BigDecimal[] {new BigDecimal(text.substring(0, slash)), new BigDecimal(text.substring(slash + 1))
                };
    }

    private static double rest(BigDecimal exact) {
        return exact.subtract(new BigDecimal(exact.doubleValue())).doubleValue();
    }

    /** A value on its own scale. */
    double toSi(double value) {
        Terms t = terms();
        double sum = value + t.shift;
        double sumRest = sumRest(value, t.shift, sum) + t.shiftRest;
        return Math.fma(sum, t.factor, Math.fma(sum, t.factorRest, sumRest * t.factor));
    }

    /** A number of steps up from an SI value. */
    double stepsUp(double origin, double steps) {
        Terms t = terms();
        double product = steps * t.factor;
        double productRest = Math.fma(steps, t.factor, -product) + steps * t.factorRest;
        double sum = origin + product;
        return sum + (sumRest(origin, product, sum) + productRest);
    }

    /** What the rounding of {@code sum = a + b} has lost. */
    private static double sumRest(double a, double b, double sum) {
        double back = sum - a;
        return (a - (sum - back)) + (b - back);
    }

    double fromSi(double si) {
        Terms t = terms();
        return Math.fma(si, t.inverse, si * t.inverseRest) - t.shift;
    }

    /** Steps of this size in an SI distance. */
    double steps(double distance) {
        Terms t = terms();
        return Math.fma(distance, t.inverse, distance * t.inverseRest);
    }

    double factor() {
        return terms().factor;
    }

    double offset() {
        return toSi(0.0);
    }

    /** Whether one step is the same size on both; the fractions are in lowest terms. */
    boolean stepsLike(Scale other) {
        return stepText().equals(other.stepText());
    }

    private String stepText() {
        int plus = text.indexOf('+');
        return plus < 0 ? text : text.substring(0, plus);
    }
}
