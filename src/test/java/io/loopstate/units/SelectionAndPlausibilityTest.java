package io.loopstate.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelectionAndPlausibilityTest {

    @Test
    void aSelectionIsASetWithOverrides() {
        UnitSelection selection = UnitSelection.parse("ip, pressure=psi(g); power=tons");
        assertThat(selection).hasToString("IP,pressure=psig,power=ton");
        assertThat(selection.unitFor(QuantityKind.PRESSURE)).hasToString("psig");
        assertThat(selection.unitFor(QuantityKind.TEMPERATURE)).hasToString("degF");
        assertThat(selection.fromSi(QuantityKind.PRESSURE, 101_325.0, Atmosphere.standard()))
                .isEqualTo(new Reading(QuantityKind.PRESSURE, 0.0, UnitToken.of("psig")));
        assertThat(UnitSelection.parse("temperature=degF").system()).isSameAs(UnitSystem.SI);
        assertThat(UnitSelection.parse("")).isEqualTo(UnitSelection.of(UnitSystem.SI));
    }

    @Test
    void asItGrowsItStaysAsItWas() {
        UnitSelection before = UnitSelection.of(UnitSystem.SI);
        before.with("temperatureDifference", "delta_degF");
        assertThat(before.overrides()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "US | UNKNOWN_UNIT_SYSTEM",
                "IP,SI | SELECTION_MALFORMED",
                "presure=psig | UNKNOWN_KIND",
                "pressure=psi | GAUGE_OR_ABSOLUTE_MISSING",
                "pressure=degF | UNIT_OF_ANOTHER_KIND",
                "pressure= | UNIT_MISSING",
            })
    void aSelectionThatCannotBeReadIsRefused(String text, String code) {
        UnitFault fault = assertThrows(UnitFault.class, () -> UnitSelection.parse(text));
        assertThat(fault.code()).isEqualTo(UnitFaultCode.valueOf(code));
    }

    @Test
    void aUnitOfAnotherKindIsRefusedAsAToken() {
        UnitFault fault = assertThrows(
                UnitFault.class,
                () -> UnitSelection.of(UnitSystem.SI).with(QuantityKind.PRESSURE, UnitToken.of("psi_diff")));
        assertThat(fault.code()).isEqualTo(UnitFaultCode.UNIT_OF_ANOTHER_KIND);
    }

    /** Ranges are common practice, no source. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pressure | 118 kPa_a | 300e3 | 2e6 | psig psia",
                "pressure | 250 kPa_a | 1e6 | 3e6 | psig psia",
                "pressure | 1.5 psig | 1e6 | 3e6 | MPa_a MPa_g",
                "temperature | 95 degC | 270 | 330 | degF",
                "temperature | 300 degC | 270 | 330 | K",
                "power | 3500 kW | 2e3 | 1e5 | W",
                "power | 36000 W | 1e3 | 2e4 | Btu_per_h",
                "volumeFlow | 1200 m3_per_h | 0.5 | 1.0 | cfm",
                "volumeFlow | 400 cfm | 0.3 | 0.5 | L_per_s",
                "ratio | 70 ratio | 0.3 | 1 | pct",
            })
    void theNumberIsUsualInAnotherUnit(String kind, String text, double low, double high, String units) {
        Reading reading = QuantityParser.parse(QuantityKind.ofKey(kind), text);
        assertThat(Plausibility.hints(reading, low, high, Atmosphere.standard()))
                .extracting(UnitToken::name)
                .containsExactly(units.split(" "));
    }

    @Test
    void theSentenceNamesTheRangeAndTheOtherUnit() {
        Reading reading = QuantityParser.parse(QuantityKind.TEMPERATURE, "95 degC");
        assertThat(Plausibility.sentence(reading, 273.15, 333.15, Atmosphere.standard()))
                .contains("95 degC is outside the usual 0 to 60 degC; 95 degF would be inside it.");
    }

    @Test
    void nothingIsSaidOfAUsualNumberOrOfAHopelessOne() {
        Reading usual = QuantityParser.parse(QuantityKind.TEMPERATURE, "40 degC");
        assertThat(Plausibility.hints(usual, 273.15, 333.15, Atmosphere.standard()))
                .isEmpty();
        Reading hopeless = QuantityParser.parse(QuantityKind.TEMPERATURE, "9000 degC");
        assertThat(Plausibility.sentence(hopeless, 273.15, 333.15, Atmosphere.standard()))
                .isEmpty();
    }

    @Test
    void suggestionsCountASwapAsOneEdit() {
        assertThat(Nearest.edits("psgi", "psig")).isEqualTo(1);
        assertThat(Nearest.edits("kitten", "sitting")).isEqualTo(3);
        assertThat(Nearest.edits("", "abc")).isEqualTo(3);
        assertThat(Nearest.to("barg", List.of("bar_g", "bar_a", "K"))).containsExactly("bar_g");
    }
}
