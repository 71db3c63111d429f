package io.loopstate.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AtmosphereTest {

    @Test
    void itDescribesItself() {
        assertThat(Atmosphere.standard().describe()).isEqualTo("standard atmosphere 101.325 kPa");
        assertThat(Atmosphere.atAltitude(1609.0).describe()).isEqualTo("altitude 1609 m: 83.431 kPa");
        assertThat(Atmosphere.ofReading(QuantityParser.parse(QuantityKind.PRESSURE, "98.2 kPa_a"))
                        .describe())
                .isEqualTo("barometer 98.2 kPa");
        assertThat(Atmosphere.standard().altitude()).isEmpty();
        assertThat(Atmosphere.atAltitude(1609.0).altitude()).hasValue(1609.0);
        assertThat(Atmosphere.atAltitude(0.0)).isNotEqualTo(Atmosphere.standard());
        assertThat(Atmosphere.atAltitude(0.0).pressure())
                .isEqualTo(Atmosphere.standard().pressure());
    }

    /** Common trade figures: 12.10 psia at 5280 ft, and 118 psig there is 115.4 psig on a sea-level chart (no source). */
    @Test
    void aGaugeReadsTheSurroundingAtmosphere() {
        Atmosphere mileHigh = Atmosphere.atAltitude(
                QuantityParser.parse(QuantityKind.LENGTH, "5280 ft").toSi(Atmosphere.standard()));
        UnitToken psig = UnitToken.of("psig");
        assertThat(UnitToken.of("psia").fromSi(mileHigh.pressure(), mileHigh))
                .isCloseTo(12.10, within(ReferenceRows.halfUnit("12.10")));
        assertThat(psig.fromSi(psig.toSi(118.0, mileHigh), Atmosphere.standard()))
                .isCloseTo(115.4, within(ReferenceRows.halfUnit("115.4")));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-501.0, 11_001.0, Double.NaN, Double.POSITIVE_INFINITY})
    void altitudesOutsideTheFormulaAreRefused(double altitude) {
        UnitFault fault = assertThrows(UnitFault.class, () -> Atmosphere.atAltitude(altitude));
        assertThat(fault.code()).isEqualTo(UnitFaultCode.ALTITUDE_OUT_OF_RANGE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"29.92 psia", "0 psig", "5 inHg_vac", "1 Pa_a"})
    void whatNoBarometerShowsIsRefused(String text) {
        Reading reading = QuantityParser.parse(QuantityKind.PRESSURE, text);
        UnitFault fault = assertThrows(UnitFault.class, () -> Atmosphere.ofReading(reading));
        assertThat(fault.code()).isEqualTo(UnitFaultCode.ATMOSPHERIC_PRESSURE_OUT_OF_RANGE);
        assertThat(fault.allowed()).isEqualTo("20 to 120 kPa_a");
    }

    @ParameterizedTest
    @CsvSource({
        "pressure, -14.7 psig, PRESSURE_BELOW_ABSOLUTE_ZERO, at least -14.6959 psig",
        "pressure, -1 kPa_a, PRESSURE_BELOW_ABSOLUTE_ZERO, at least 0 kPa_a",
        "pressure, 30 inHg_vac, VACUUM_BELOW_ABSOLUTE_ZERO, 0 to 29.9213 inHg_vac",
        "pressure, -5 inHg_vac, VACUUM_NEGATIVE, 0 to 29.9213 inHg_vac",
        "temperature, -500 degF, TEMPERATURE_BELOW_ABSOLUTE_ZERO, at least -459.67 degF",
        "temperature, -1 K, TEMPERATURE_BELOW_ABSOLUTE_ZERO, at least 0 K",
        "power, 1e305 MW, NUMBER_NOT_FINITE, a finite number",
    })
    void whatCannotBeIsRefused(String kind, String text, String code, String allowed) {
        Reading reading = QuantityParser.parse(QuantityKind.ofKey(kind), text);
        UnitFault fault = assertThrows(UnitFault.class, () -> reading.toSi(Atmosphere.standard()));
        assertThat(fault.code()).isEqualTo(UnitFaultCode.valueOf(code));
        assertThat(fault.allowed()).isEqualTo(allowed);
    }

    @Test
    void differencesMayBeNegative() {
        assertThat(QuantityParser.parse(QuantityKind.TEMPERATURE_DIFFERENCE, "-9 delta_degF")
                        .toSi(Atmosphere.standard()))
                .isEqualTo(-5.0);
        assertThat(QuantityParser.parse(QuantityKind.TEMPERATURE_DIFFERENCE, "-5 K")
                        .toSi(Atmosphere.standard()))
                .isEqualTo(-5.0);
        assertThat(QuantityParser.parse(QuantityKind.PRESSURE_DIFFERENCE, "-1 bar")
                        .toSi(Atmosphere.standard()))
                .isEqualTo(-1e5);
    }

    /** Neither -459.67 nor -273.15 is a binary fraction: what remains is the last place of the shift. */
    @ParameterizedTest
    @CsvSource({"temperature, -459.67 degF", "temperature, -273.15 degC", "pressure, -101.325 kPa_g", "pressure, 0 psia"
    })
    void anAbsoluteZeroMayBeGiven(String kind, String text) {
        Reading zero = QuantityParser.parse(QuantityKind.ofKey(kind), text);
        assertThat(zero.toSi(Atmosphere.standard())).isNotNegative().isLessThan(Math.ulp(273.15));
    }

    @Test
    void theEngineMustNotHandOutNonsense() {
        assertThrows(
                IllegalArgumentException.class, () -> UnitToken.of("psig").fromSi(Double.NaN, Atmosphere.standard()));
        assertThrows(
                IllegalArgumentException.class, () -> new Reading(QuantityKind.PRESSURE, 1.0, UnitToken.of("degF")));
    }
}
