package io.loopstate.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.component.SuctionLineGain;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each finding of a design cycle on the far side of its limit, and none on the near side. Limits: {@link Guideline}. */
class DesignFindingsTest {
    @Test
    void aSoundCycleHasNoFindings() {
        assertThat(TestCycles.sound().findings()).isEmpty();
    }

    static Stream<Arguments> findings() {
        return Stream.of(
                change(
                        FindingCode.LIQUID_AT_COMPRESSOR,
                        Severity.DANGER,
                        c -> c.evaporatorOutlet(OutletCondition.quality(0.98))),
                change(
                        FindingCode.LOW_SUPERHEAT,
                        Severity.CAUTION,
                        c -> c.evaporatorOutlet(OutletCondition.superheat(2.7))),
                change(
                        FindingCode.HIGH_SUPERHEAT,
                        Severity.NOTE,
                        c -> c.evaporatorOutlet(OutletCondition.superheat(7))),
                change(
                        FindingCode.HIGH_SUPERHEAT,
                        Severity.NOTE,
                        c -> c.losses(LineLosses.none().withSuctionLineGain(SuctionLineGain.temperatureRise(12)))),
                change(
                        FindingCode.NO_SUBCOOLING,
                        Severity.CAUTION,
                        c -> c.condenserOutlet(OutletCondition.subcooling(0))),
                change(
                        FindingCode.NO_SUBCOOLING,
                        Severity.CAUTION,
                        c -> c.condenserOutlet(OutletCondition.quality(0.03))),
                change(
                        FindingCode.LOW_SUBCOOLING,
                        Severity.NOTE,
                        c -> c.condenserOutlet(OutletCondition.subcooling(4))),
                change(
                        FindingCode.HIGH_SUBCOOLING,
                        Severity.NOTE,
                        c -> c.condenserOutlet(OutletCondition.subcooling(9))),
                change(FindingCode.HIGH_DISCHARGE_TEMPERATURE, Severity.DANGER, c -> c.efficiency(0.25)),
                change(
                        FindingCode.HIGH_PRESSURE_RATIO,
                        Severity.CAUTION,
                        c -> c.evaporating(SaturationLevel.temperature(247))),
                change(
                        FindingCode.VACUUM_SUCTION,
                        Severity.CAUTION,
                        c -> c.evaporating(SaturationLevel.temperature(246.5))),
                change(
                        FindingCode.NEAR_CRITICAL,
                        Severity.CAUTION,
                        c -> c.condensing(SaturationLevel.temperature(371))),
                change(FindingCode.TRANSCRITICAL, Severity.NOTE, c -> TestCycles.transcritical()),
                change(
                        FindingCode.WET_DISCHARGE,
                        Severity.DANGER,
                        c -> c.evaporatorOutlet(OutletCondition.quality(0.8)).efficiency(1)),
                change(
                        FindingCode.ABOVE_CARNOT,
                        Severity.CAUTION,
                        c -> c.condensing(SaturationLevel.temperature(265))
                                .condenserOutlet(OutletCondition.subcooling(15))
                                .efficiency(1)),
                change(FindingCode.LOW_VOLUMETRIC_EFFICIENCY, Severity.CAUTION, c -> c.volumetricEfficiency(0.45)),
                change(FindingCode.VOLUMETRIC_EFFICIENCY_ASSUMED, Severity.NOTE, c -> c.size(Size.displacement(0.01))));
    }

    @ParameterizedTest
    @MethodSource("findings")
    void aFindingOnTheFarSideOfItsLimit(FindingCode code, Severity severity, UnaryOperator<TestCycles> change) {
        assertThat(change.apply(TestCycles.sound()).findings())
                .filteredOn(finding -> finding.code() == code)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(severity);
                    assertThat(finding.message()).doesNotContainPattern("[0-9]");
                    assertThat(finding.basis()).isNotBlank();
                    assertThat(finding.value().isPresent())
                            .isEqualTo(finding.limit().isPresent());
                });
    }

    static Stream<Arguments> nearSides() {
        return Stream.of(
                change(
                        FindingCode.LOW_SUPERHEAT,
                        Severity.CAUTION,
                        c -> c.evaporatorOutlet(OutletCondition.superheat(2.8))),
                change(
                        FindingCode.HIGH_SUPERHEAT,
                        Severity.NOTE,
                        c -> c.losses(LineLosses.none().withSuctionLineGain(SuctionLineGain.temperatureRise(10)))),
                change(
                        FindingCode.NO_SUBCOOLING,
                        Severity.CAUTION,
                        c -> c.condenserOutlet(OutletCondition.subcooling(0.1))),
                change(
                        FindingCode.HIGH_SUBCOOLING,
                        Severity.NOTE,
                        c -> c.condenserOutlet(OutletCondition.subcooling(8))),
                change(FindingCode.HIGH_DISCHARGE_TEMPERATURE, Severity.DANGER, c -> c.efficiency(0.45)),
                change(
                        FindingCode.HIGH_PRESSURE_RATIO,
                        Severity.CAUTION,
                        c -> c.evaporating(SaturationLevel.temperature(248.5))),
                change(
                        FindingCode.VACUUM_SUCTION,
                        Severity.CAUTION,
                        c -> c.evaporating(SaturationLevel.temperature(247.5))),
                change(
                        FindingCode.NEAR_CRITICAL,
                        Severity.CAUTION,
                        c -> c.condensing(SaturationLevel.temperature(367))),
                change(FindingCode.LOW_VOLUMETRIC_EFFICIENCY, Severity.CAUTION, c -> c.volumetricEfficiency(0.55)),
                change(
                        FindingCode.VOLUMETRIC_EFFICIENCY_ASSUMED,
                        Severity.NOTE,
                        c -> c.volumetricEfficiency(0.8).size(Size.displacement(0.01))));
    }

    @ParameterizedTest
    @MethodSource("nearSides")
    void noFindingOnTheNearSide(FindingCode code, Severity severity, UnaryOperator<TestCycles> change) {
        assertThat(change.apply(TestCycles.sound()).findings())
                .extracting(Finding::code)
                .doesNotContain(code);
    }

    @Test
    void aFindingCarriesValueLimitAndBasis() {
        Finding finding = TestCycles.sound()
                .evaporatorOutlet(OutletCondition.superheat(2))
                .findings()
                .get(0);
        assertThat(finding.code()).isEqualTo(FindingCode.LOW_SUPERHEAT);
        assertThat(finding.subject()).isEqualTo("superheat");
        assertThat(finding.kind()).contains(QuantityKind.TEMPERATURE_DIFFERENCE);
        assertThat(finding.value().orElseThrow()).isCloseTo(2, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(finding.limit()).hasValue(5 / 1.8);
        assertThat(finding.basis()).isEqualTo("common practice, no source");
    }

    @Test
    void aReplacedLimitHoldsAndIsNamed() {
        Guidance guidance =
                Guidance.common().with(Guideline.MIN_SUPERHEAT, new Limit(8, "compressor maker's data sheet"));
        assertThat(TestCycles.sound().guidance(guidance).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.limit()).hasValue(8);
                    assertThat(finding.basis()).isEqualTo("compressor maker's data sheet");
                });
    }

    private static Arguments change(FindingCode code, Severity severity, UnaryOperator<TestCycles> change) {
        return Arguments.of(code, severity, change);
    }
}
