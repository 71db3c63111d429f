package io.loopstate.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Conversion factors of NIST SP 811 appendix B (recalled from it, see column {@code origin}). Exact factors hold to
 * the last place of a double, those derived from exact definitions to one unit of the last of their sixteen printed
 * digits, rounded ones to half a unit of the last digit.
 */
class ConversionReferenceTest {

    static List<NamedCsvRecord> rows() {
        return ReferenceRows.of("unit-conversions.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void factorIsThePublishedOne(NamedCsvRecord row) {
        QuantityKind kind = QuantityKind.ofKey(row.getField("kind"));
        Reading one = QuantityParser.parse(kind, 1.0, row.getField("from"));
        double converted =
                one.in(UnitToken.of(row.getField("to")), Atmosphere.standard()).value();
        String printed = row.getField("factor");
        double expected = Double.parseDouble(printed);
        double tolerance = tolerance(row.getField("exact"), printed);
        assertThat(converted).isCloseTo(expected, within(tolerance));
    }

    private static double tolerance(String exact, String printed) {
        if (exact.startsWith("yes")) {
            return Math.ulp(Double.parseDouble(printed));
        }
        return ReferenceRows.halfUnit(printed) * (exact.startsWith("derived") ? 2 : 1);
    }
}
