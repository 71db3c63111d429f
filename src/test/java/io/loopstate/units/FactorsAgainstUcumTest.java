package io.loopstate.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.format.UnitFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.ucum.format.UCUMFormat;
import tech.units.indriya.function.RationalNumber;

/**
 * Every factor in {@code units/units.txt} worked out again from its UCUM expression, exactly, by the UCUM library. A
 * new unit starts here: leave its factor at 1 and this test says what it must be.
 */
class FactorsAgainstUcumTest {
    private static final UnitFormat UCUM = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);

    /** UCUM codes that the library does not know, or whose value there is not the one used here; reasons in the notes. */
    private static final Map<String, String> OTHER_VALUE = Map.of(
            "[degR]", "not in the library; UCUM defines it as 5 K/9, which is the definition column",
            "[HP]", "the library leaves out the 550 of UCUM's 550 [ft_i].[lbf_av]/s",
            "[in_i'Hg]", "UCUM rounds the meter of mercury to 133.322 kPa",
            "mm[Hg]", "UCUM rounds the meter of mercury to 133.322 kPa",
            "rad/s", "UCUM counts angles, this kind counts revolutions");

    static List<UnitTable.Row> rows() {
        return UnitTable.load().rows();
    }

    static Stream<UnitTable.Row> rowsWithCode() {
        return rows().stream().filter(row -> !row.ucum().isEmpty()).filter(row -> !OTHER_VALUE.containsKey(row.ucum()));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void factorIsWhatItsDefinitionGives(UnitTable.Row row) throws IncommensurableException {
        for (QuantityKind kind : row.kinds()) {
            assertThat(row.factor()).as(row.definition()).isEqualTo(factor(row.definition(), kind));
        }
    }

    @ParameterizedTest
    @MethodSource("rowsWithCode")
    void factorIsThatOfTheUcumCode(UnitTable.Row row) throws IncommensurableException {
        assertThat(row.factor()).isEqualTo(factor(row.ucum(), row.kinds().get(0)));
    }

    @Test
    void theExceptionsAreStillNeededAndExplained() throws IncommensurableException {
        for (UnitTable.Row row : rows()) {
            if (OTHER_VALUE.containsKey(row.ucum()) && !row.ucum().equals("[degR]")) {
                assertThat(factor(row.ucum(), row.kinds().get(0))).isNotEqualTo(row.factor());
                assertThat(row.note()).as("note of " + row.tokens()).isNotEmpty();
            }
        }
    }

    private static String factor(String expression, QuantityKind kind) throws IncommensurableException {
        Unit<?> si = UCUM.parse(kind.siUnit());
        UnitConverter converter = UCUM.parse(expression).getConverterToAny(si);
        RationalOrDecimal zero = RationalOrDecimal.of(converter.convert((Number) 0));
        RationalOrDecimal one = RationalOrDecimal.of(converter.convert((Number) 1));
        return zero.isZero() ? one.text() : one.minus(zero).text() + "+" + zero.text();
    }

    /** The library's answers are integers, rationals, or 34 digits where pi is involved. */
    private record RationalOrDecimal(BigInteger numerator, BigInteger denominator, BigDecimal digits) {

        static RationalOrDecimal of(Number number) {
            if (number instanceof RationalNumber rational) {
                return new RationalOrDecimal(rational.getDividend(), rational.getDivisor(), null);
            }
            BigDecimal decimal = new BigDecimal(number.toString());
            if (decimal.precision() > 30) {
                return new RationalOrDecimal(null, null, decimal.stripTrailingZeros());
            }
            return fraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
        }

        private static RationalOrDecimal fraction(BigInteger numerator, BigInteger denominator) {
            BigInteger common = numerator.gcd(denominator);
            return new RationalOrDecimal(numerator.divide(common), denominator.divide(common), null);
        }

        boolean isZero() {
            return digits == null && numerator.signum() == 0;
        }

        RationalOrDecimal minus(RationalOrDecimal other) {
            return fraction(
                    numerator.multiply(other.denominator).subtract(other.numerator.multiply(denominator)),
                    denominator.multiply(other.denominator));
        }

        String text() {
            if (digits != null) {
                return digits.toPlainString();
            }
            return denominator.equals(BigInteger.ONE) ? numerator.toString() : numerator + "/" + denominator;
        }
    }
}
