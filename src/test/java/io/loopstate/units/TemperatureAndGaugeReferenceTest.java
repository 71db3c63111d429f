package io.loopstate.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Temperature scales, gauge and vacuum readings after NIST SP 811 (recalled, see column {@code origin}). */
class TemperatureAndGaugeReferenceTest {

    static List<NamedCsvRecord> rows() {
        return ReferenceRows.of("temperature-and-gauge.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void readingIsThePublishedOne(NamedCsvRecord row) {
        String reference = row.getField("reference_pressure");
        Atmosphere atmosphere = reference.isEmpty()
                ? Atmosphere.standard()
                : Atmosphere.ofReading(QuantityParser.parse(
                        QuantityKind.PRESSURE, reference + " " + unit(row.getField("reference_pressure_unit"))));
        QuantityKind kind = row.getField("given_unit").length() == 1 ? QuantityKind.TEMPERATURE : QuantityKind.PRESSURE;
        Reading given = QuantityParser.parse(kind, row.getField("given") + " " + unit(row.getField("given_unit")));
        String printed = row.getField("result");
        UnitToken unit = QuantityParser.parse(kind, printed + " " + unit(row.getField("result_unit")))
                .unit();
        assertThat(given.in(unit, atmosphere).value())
                .isCloseTo(Double.parseDouble(printed), within(tolerance(row, printed)));
    }

    /** The table writes a barometer as plain inHg; a service refuses that, so its reading is spelled out here. */
    private static String unit(String printed) {
        return printed.equals("inHg") ? "inHg_a" : printed;
    }

    /** Fixed points of the scales are exact: only the last place at absolute temperatures of some 300 K or 600 R. */
    private static double tolerance(NamedCsvRecord row, String printed) {
        return row.getField("given_unit").length() == 1 ? Math.ulp(600.0) : ReferenceRows.halfUnit(printed);
    }

    @Test
    void aBarometerInPlainInchesOfMercuryIsRefused() {
        assertThatThrownBy(() -> QuantityParser.parse(QuantityKind.PRESSURE, "29.921 inHg"))
                .isInstanceOfSatisfying(
                        UnitFault.class,
                        fault -> assertThat(fault.code()).isEqualTo(UnitFaultCode.GAUGE_OR_ABSOLUTE_MISSING));
    }

    @Test
    void aVacuumDeeperThanTheAtmosphereIsRefused() {
        Reading vacuum = QuantityParser.parse(QuantityKind.PRESSURE, "26 inHg_vac");
        assertThat(vacuum.toSi(Atmosphere.standard())).isPositive();
        Atmosphere mileHigh = Atmosphere.atAltitude(1609.344);
        assertThatThrownBy(() -> vacuum.toSi(mileHigh)).isInstanceOfSatisfying(UnitFault.class, fault -> {
            assertThat(fault.code()).isEqualTo(UnitFaultCode.VACUUM_BELOW_ABSOLUTE_ZERO);
            assertThat(fault.getMessage()).contains("altitude 1609 m: 83.428 kPa");
            assertThat(fault.allowed()).isEqualTo("0 to 24.6361 inHg_vac");
        });
    }
}
