package io.loopstate.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What technicians, spreadsheets and programs write, and what is said when it cannot be taken. */
class QuantityParserTest {

    static UnitFault fault(QuantityKind kind, String text) {
        return assertThrows(UnitFault.class, () -> QuantityParser.parse(kind, text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "pressure | 118 psig | 118 | psig",
                "pressure | 118psig | 118 | psig",
                "pressure | 118 PSIG | 118 | psig",
                "pressure | 118 psi(g) | 118 | psig",
                "pressure | 118 psi gauge | 118 | psig",
                "pressure | 132.7 psi(a) | 132.7 | psia",
                "pressure | 8.1 barg | 8.1 | bar_g",
                "pressure | 9.1 bara | 9.1 | bar_a",
                "pressure | 9.1 bar abs | 9.1 | bar_a",
                "pressure | 1e3 Pa_a | 1000 | Pa_a",
                "pressure | 1.5E+3 kPa(a) | 1500 | kPa_a",
                "pressure | 2.5 MPa(g) | 2.5 | MPa_g",
                "pressure | 10 inHg vacuum | 10 | inHg_vac",
                "pressure | 29.92 in. Hg abs | 29.92 | inHg_a",
                "pressure | 500 microns | 500 | micron_a",
                "pressure | 500 µ | 500 | micron_a",
                "pressure | 500 μmHg | 500 | micron_a",
                "pressure | 12 kgf/cm2 g | 12 | kgf_cm2_g",
                "pressureDifference | 3 psi | 3 | psi_diff",
                "pressureDifference | 3 psid | 3 | psi_diff",
                "pressureDifference | 0.5 in. w.c. | 0.5 | inH2O_diff",
                "pressureDifference | 20 [psi] | 20 | psi_diff",
                "temperature | 41.5 degF | 41.5 | degF",
                "temperature | -40degC | -40 | degC",
                "temperature | −40 °C | -40 | degC",
                "temperature | - 40 ℃ | -40 | degC",
                "temperature | 41.5 ºF | 41.5 | degF",
                "temperature | 41.5 [degF] | 41.5 | degF",
                "temperature | 5 Cel | 5 | degC",
                "temperature | +300 K | 300 | K",
                "temperatureDifference | 10 Δ°F | 10 | delta_degF",
                "temperatureDifference | 10 ΔK | 10 | delta_K",
                "temperatureDifference | -3 K | -3 | K",
                "volumeFlow | 400 CFM | 400 | cfm",
                "volumeFlow | 680 m³/h | 680 | m3_per_h",
                "volumeFlow | 680 m3 per hr | 680 | m3_per_h",
                "specificVolume | 1.2 ft³/lb | 1.2 | ft3_per_lb",
                "specificEnergy | 110 [Btu_IT]/[lb_av] | 110 | Btu_per_lb",
                "specificEntropy | 1.75 kJ/(kg.K) | 1.75 | kJ_per_kg_K",
                "specificEntropy | 1.75 kJ/kg K | 1.75 | kJ_per_kg_K",
                "specificEntropy | .24 BTU/lbm-°R | 0.24 | Btu_per_lb_degF",
                "heatTransferCoefficient | 30 Btu/(hr·ft²·°F) | 30 | Btu_per_h_ft2_degF",
                "thermalConductivity | 0.0143 W/mK | 0.0143 | W_per_m_K",
                "dynamicViscosity | 12.5 µPa·s | 12.5 | uPa_s",
                "dynamicViscosity | 0.2 mPa.s | 0.2 | mPa_s",
                "power | 12000 BTU/hr | 12000 | Btu_per_h",
                "power | 12000 [Btu_IT]/h | 12000 | Btu_per_h",
                "power | 36 MBH | 36 | MBH",
                "power | 3 tons | 3 | ton",
                "power | 7 MW | 7 | MW",
                "power | 4 PS | 4 | hp_metric",
                "thermalExpansion | 0.003 1/K | 0.003 | per_K",
                "frequency | 1750 RPM | 1750 | rpm",
                "length | 5280 ' | 5280 | ft",
                "mass | 2 tonnes | 2 | tonne",
                "ratio | 70 % | 70 | pct",
                "ratio | 70 pct | 70 | pct",
                "ratio | 0.7 | 0.7 | ratio",
            })
    void reads(String kind, String text, String value, String unit) {
        Reading reading = QuantityParser.parse(QuantityKind.ofKey(kind), text);
        assertThat(reading.value()).isEqualTo(Double.parseDouble(value));
        assertThat(reading.unit()).isSameAs(UnitToken.of(unit));
    }

    @Test
    void everyKindOfSpaceIsASpace() {
        for (char space : new char[] {'\u00A0', '\u2009', '\u202F', '\u2007', '\t', '\u3000'}) {
            assertThat(QuantityParser.parse(QuantityKind.PRESSURE, space + "118" + space + "psig" + space))
                    .isEqualTo(QuantityParser.parse(QuantityKind.PRESSURE, "118 psig"));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "pressure | 118 | UNIT_MISSING | Write for example \"118 psig\", \"118 psia\" or \"118 kPa_a\".",
                "temperature | 41.5 | UNIT_MISSING | Write for example \"41.5 degF\" or \"41.5 degC\".",
                "pressure | 118 psi | GAUGE_OR_ABSOLUTE_MISSING | Write psia for an absolute pressure or psig for a gauge reading.",
                "pressure | 9 bar | GAUGE_OR_ABSOLUTE_MISSING | Write bar_a for an absolute pressure or bar_g for a gauge reading.",
                "pressure | 9 mm[Hg] | GAUGE_OR_ABSOLUTE_MISSING | Write mmHg_a for an absolute pressure, mmHg_g for a gauge reading or mmHg_vac for a vacuum below the atmosphere.",
                "pressure | 2 atm | GAUGE_OR_ABSOLUTE_MISSING | Write atm_a for an absolute pressure or another unit such as psig or bar_g for a gauge reading.",
                "pressure | 118 psgi | UNKNOWN_UNIT | Did you mean psig?",
                "pressure | 1 mPa_a | UNKNOWN_UNIT | Did you mean MPa_a, Pa_a or hPa_a?",
                "pressure | 8 bar+g | UNKNOWN_UNIT | Write bar_g. In a query + stands for a space; a plus sign is written %2B.",
                "temperature | 41.5 \uFFFDF | UNKNOWN_UNIT | A character was not UTF-8: in a query the degree sign is %C2%B0 (not %B0); degF and degC need no such sign.",
                "temperatureDifference | 10 degF | UNIT_OF_ANOTHER_KIND | For a temperature difference write delta_degF.",
                "temperatureDifference | 10 °C | UNIT_OF_ANOTHER_KIND | For a temperature difference write delta_degC.",
                "temperature | 10 delta_degF | UNIT_OF_ANOTHER_KIND | For a temperature write degF.",
                "pressureDifference | 10 psig | UNIT_OF_ANOTHER_KIND | For a pressure difference write psi_diff.",
                "pressure | 10 psi_diff | UNIT_OF_ANOTHER_KIND | For a pressure write psia or psig.",
                "power | 3 t | UNIT_OF_ANOTHER_KIND | A tonne is 1000 kg; for a ton of refrigeration, 12000 Btu/h, write ton.",
                "power | 3 tonne | UNIT_OF_ANOTHER_KIND | A tonne is 1000 kg; for a ton of refrigeration, 12000 Btu/h, write ton.",
                "mass | 3 ton | UNIT_OF_ANOTHER_KIND | ton is the ton of refrigeration, a heat rate; for 1000 kg write tonne.",
                "power | 3 RT | AMBIGUOUS_UNIT | This is used for both the ton of 12000 Btu/h and the Japanese ton: write ton or ton_japan.",
                "power | 36 MBtu/h | AMBIGUOUS_UNIT | M is a thousand to the trade and a million to the metric system: write MBH for a thousand Btu per hour, MMBtu_per_h for a million.",
                "temperature | 41,5 degF | DECIMAL_COMMA | Write 41.5, or declare the decimal comma with dec=,.",
                "pressure | 1,234 kPa_a | DECIMAL_COMMA | Write 1234 or 1.234, or declare the decimal comma with dec=,.",
                "pressure | 1,234.5 kPa_a | GROUPING_SEPARATOR | Write 1234.5 if that is meant.",
                "pressure | 1.234,5 kPa_a | GROUPING_SEPARATOR | Write 1234.5 if that is meant.",
                "pressure | 1 234 kPa_a | GROUPING_SEPARATOR | Write 1234 if that is meant.",
                "pressure | 1'234'567 Pa_a | GROUPING_SEPARATOR | Write 1234567 if that is meant.",
                "pressure | 1_000 kPa_a | GROUPING_SEPARATOR | Write 1000 if that is meant.",
                "pressure | 1e 3 kPa_a | NUMBER_MALFORMED | In a query + stands for a space; a plus sign is written %2B.",
            })
    void refusesWithAHint(String kind, String text, String code, String hint) {
        UnitFault fault = fault(QuantityKind.ofKey(kind), text);
        assertThat(fault.code()).isEqualTo(UnitFaultCode.valueOf(code));
        assertThat(fault.hint()).isEqualTo(hint);
        assertThat(fault.got()).isEqualTo(text);
        assertThat(fault.allowed()).isNotEmpty();
        assertThat(fault.getMessage()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "NaN psig | NUMBER_NOT_FINITE",
                "Infinity psig | NUMBER_NOT_FINITE",
                "-∞ psig | NUMBER_NOT_FINITE",
                "1e999 psig | NUMBER_NOT_FINITE",
                "1e-999 psig | NUMBER_NOT_FINITE",
                "0x1F psig | NUMBER_MALFORMED",
                "1.2.3 psig | NUMBER_MALFORMED",
                "12 34 psig | NUMBER_MALFORMED",
                "٣ psig | NUMBER_MALFORMED",
                "psig | NUMBER_MISSING",
                "-psig | NUMBER_MISSING",
                "`` | NUMBER_MISSING",
                "` ` | NUMBER_MISSING",
                "1f psig | UNKNOWN_UNIT",
                "118 psig psig | UNKNOWN_UNIT",
            })
    void refusesWhatIsNotADecimalNumberWithAUnit(String text, String code) {
        assertThat(fault(QuantityKind.PRESSURE, text).code()).isEqualTo(UnitFaultCode.valueOf(code));
    }

    @Test
    void theDeclaredDecimalCommaIsRead() {
        assertThat(QuantityParser.parse(QuantityKind.TEMPERATURE, "41,5 degF", DecimalMark.COMMA)
                        .value())
                .isEqualTo(41.5);
        assertThat(QuantityParser.parse(QuantityKind.PRESSURE, "1,5e3 kPa_a", DecimalMark.COMMA)
                        .value())
                .isEqualTo(1500.0);
        UnitFault grouped = assertThrows(
                UnitFault.class, () -> QuantityParser.parse(QuantityKind.PRESSURE, "1.234,5 kPa_a", DecimalMark.COMMA));
        assertThat(grouped.code()).isEqualTo(UnitFaultCode.GROUPING_SEPARATOR);
        assertThat(grouped.hint()).isEqualTo("Write 1234,5 if that is meant.");
        UnitFault point = assertThrows(
                UnitFault.class, () -> QuantityParser.parse(QuantityKind.PRESSURE, "1.234 kPa_a", DecimalMark.COMMA));
        assertThat(point.code()).isEqualTo(UnitFaultCode.DECIMAL_POINT);
        assertThat(point.hint()).isEqualTo("Write 1,234, or leave out dec=,.");
    }

    @Test
    void theNumberAndItsUnitMayArriveApart() {
        assertThat(QuantityParser.parse(QuantityKind.PRESSURE, 118.0, "psi(g)"))
                .isEqualTo(new Reading(QuantityKind.PRESSURE, 118.0, UnitToken.of("psig")));
        assertThat(QuantityParser.parse(QuantityKind.RATIO, 0.7, null).unit()).isSameAs(UnitToken.of("ratio"));
        assertThat(assertThrows(UnitFault.class, () -> QuantityParser.parse(QuantityKind.PRESSURE, 118.0, null))
                        .code())
                .isEqualTo(UnitFaultCode.UNIT_MISSING);
        assertThat(assertThrows(UnitFault.class, () -> QuantityParser.parse(QuantityKind.PRESSURE, Double.NaN, "psig"))
                        .code())
                .isEqualTo(UnitFaultCode.NUMBER_NOT_FINITE);
    }

    @Test
    void aMissingTextIsAMissingNumber() {
        assertThat(fault(QuantityKind.PRESSURE, null).code()).isEqualTo(UnitFaultCode.NUMBER_MISSING);
    }

    @Test
    void aLongTextIsRefusedWithoutReadingIt() {
        String text = "1".repeat(10_000_000);
        UnitFault fault = assertTimeoutPreemptively(Duration.ofSeconds(1), () -> fault(QuantityKind.PRESSURE, text));
        assertThat(fault.code()).isEqualTo(UnitFaultCode.TEXT_TOO_LONG);
        assertThat(fault.got()).hasSize(41);
        assertThat(QuantityParser.parse(QuantityKind.PRESSURE, "1.".concat("0".repeat(57)) + " psig")
                        .value())
                .isEqualTo(1.0);
    }

    @Test
    void whatWasGotIsShownWithoutControlCharacters() {
        UnitFault fault = fault(QuantityKind.PRESSURE, "118 \u0007\u202Epsig\uD800");
        assertThat(fault.got()).isEqualTo("118   psig ");
        assertThat(fault.code()).isEqualTo(UnitFaultCode.UNKNOWN_UNIT);
    }
}
