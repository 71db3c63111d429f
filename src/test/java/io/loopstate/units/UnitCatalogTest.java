package io.loopstate.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitCatalogTest {

    static List<UnitToken> units() {
        return UnitCatalog.all();
    }

    @Test
    void namesAreFitForEnumerationsInEveryLanguage() {
        assertThat(units()).extracting(UnitToken::name).allMatch(name -> name.matches("[A-Za-z][A-Za-z0-9_]*"));
        assertThat(units())
                .extracting(unit -> unit.name().toUpperCase(Locale.ROOT))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("units")
    void everyListedSpellingLeadsToItsUnit(UnitToken unit) {
        for (QuantityKind kind : QuantityKind.values()) {
            if (unit.measures(kind)) {
                assertThat(unit.spellings())
                        .allSatisfy(spelling -> assertThat(QuantityParser.parse(kind, 1.0, spelling))
                                .isEqualTo(new Reading(kind, 1.0, unit)));
                assertThat(unit.spellings())
                        .filteredOn(spelling -> !spelling.startsWith("1"))
                        .allSatisfy(spelling -> assertThat(QuantityParser.parse(kind, "2.5" + spelling))
                                .isEqualTo(new Reading(kind, 2.5, unit)));
            }
        }
        assertThat(QuantityParser.parse(unit.kind(), 1.0, unit.name()).unit()).isSameAs(unit);
        assertThat(QuantityParser.parse(unit.kind(), 1.0, unit.symbol()).unit()).isSameAs(unit);
    }

    @ParameterizedTest
    @MethodSource("units")
    void everyUnitIsDescribed(UnitToken unit) {
        assertThat(unit.words()).isNotBlank();
        assertThat(unit.symbol()).isNotBlank();
        assertThat(unit.factor()).isPositive().isFinite();
        assertThat(unit.ucum().orElse("none")).matches("[!-~]+");
        assertThat(unit.qudt().orElse("http://qudt.org/vocab/unit/none"))
                .matches("http://qudt\\.org/vocab/unit/[A-Za-z0-9_-]+");
        boolean pressure = unit.measures(QuantityKind.PRESSURE) || unit.measures(QuantityKind.PRESSURE_DIFFERENCE);
        assertThat(unit.reference() == PressureReference.NONE).isNotEqualTo(pressure);
    }

    @Test
    void pressuresSayWhatTheyAreCountedFrom() {
        assertThat(UnitToken.of("psig").words()).isEqualTo("pound-force per square inch, gauge");
        assertThat(UnitToken.of("psig").symbol()).isEqualTo("psi(g)");
        assertThat(UnitToken.of("bar_a").symbol()).isEqualTo("bar(a)");
        assertThat(UnitToken.of("inHg_vac").symbol()).isEqualTo("inHg vacuum");
        assertThat(UnitToken.of("micron_a").words()).isEqualTo("micron of mercury, always absolute");
        assertThat(UnitToken.of("psi_diff").ucum()).contains("[psi]");
        assertThat(UnitToken.of("psi_diff").qudt()).contains("http://qudt.org/vocab/unit/PSI");
        assertThat(UnitToken.of("degF").offset())
                .isEqualTo(new BigDecimal("45967")
                        .divide(new BigDecimal("180"), MathContext.DECIMAL128)
                        .doubleValue());
    }

    @ParameterizedTest
    @EnumSource(QuantityKind.class)
    void everyKindHasAReplyUnitInBothSets(QuantityKind kind) {
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(system.unitFor(kind).measures(kind)).isTrue();
        }
        assertThat(kind.units()).isNotEmpty().allMatch(unit -> unit.measures(kind));
        assertThat(QuantityKind.ofKey(kind.key())).isSameAs(kind);
    }

    @Test
    void theCatalogIsALineForEachKind() {
        assertThat(UnitCatalog.entries()).extracting(UnitCatalog.Entry::kind).containsExactly(QuantityKind.values());
        UnitCatalog.Entry pressure = UnitCatalog.entries().get(QuantityKind.PRESSURE.ordinal());
        assertThat(pressure.siReply()).hasToString("kPa_a");
        assertThat(pressure.ipReply()).hasToString("psia");
        assertThat(pressure.units()).contains(UnitToken.of("psig"), UnitToken.of("inHg_vac"));
    }

    @Test
    void unknownNamesAreAnsweredWithTheNearest() {
        UnitFault unit = assertThrows(UnitFault.class, () -> UnitToken.of("kPa_abs"));
        assertThat(unit.hint()).isEqualTo("Did you mean kPa_a?");
        UnitFault kind = assertThrows(UnitFault.class, () -> QuantityKind.ofKey("massflow"));
        assertThat(kind.code()).isEqualTo(UnitFaultCode.UNKNOWN_KIND);
        assertThat(kind.hint()).isEqualTo("Did you mean massFlow?");
    }

    /** Milli and mega lie 1e9 apart: no reading of one may take the other. */
    @Test
    void milliAndMegaStayApart() {
        assertThat(QuantityParserTest.fault(QuantityKind.PRESSURE, "1 mPa(a)").code())
                .isEqualTo(UnitFaultCode.UNKNOWN_UNIT);
        assertThat(QuantityParserTest.fault(QuantityKind.POWER, "1 mW").code()).isEqualTo(UnitFaultCode.UNKNOWN_UNIT);
        assertThat(QuantityParserTest.fault(QuantityKind.DYNAMIC_VISCOSITY, "1 MPa.s")
                        .code())
                .isEqualTo(UnitFaultCode.UNKNOWN_UNIT);
        assertThat(QuantityParserTest.fault(QuantityKind.LENGTH, "1 Mm").code()).isEqualTo(UnitFaultCode.UNKNOWN_UNIT);
        assertThat(QuantityParserTest.fault(QuantityKind.PRESSURE, "1 Mbar(a)").code())
                .isEqualTo(UnitFaultCode.UNKNOWN_UNIT);
        assertThat(QuantityParser.parse(QuantityKind.PRESSURE, "1 MPA(A)").unit())
                .hasToString("MPa_a");
    }
}
