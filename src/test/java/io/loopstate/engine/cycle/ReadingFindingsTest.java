package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.TestReadings.airStream;
import static io.loopstate.engine.cycle.TestReadings.airTemperatures;
import static io.loopstate.engine.cycle.TestReadings.measuredHeat;
import static io.loopstate.engine.cycle.TestReadings.none;
import static io.loopstate.engine.cycle.TestReadings.some;
import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.GlidingFluid;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each finding of a set of readings on the far side of its limit, and none on the near side. Limits: {@link Guideline}. */
class ReadingFindingsTest {
    @Test
    void soundReadingsHaveNoFindings() {
        assertThat(TestReadings.sound().findings()).isEmpty();
        assertThat(TestReadings.sound()
                        .outdoor(300)
                        .condenserAir(airTemperatures(300, 308))
                        .evaporatorAir(airTemperatures(275, 268))
                        .findings())
                .isEmpty();
    }

    static Stream<Arguments> findings() {
        return Stream.of(
                change(
                        FindingCode.LIQUID_AT_COMPRESSOR,
                        "suctionLineTemperature",
                        r -> r.suctionLine(263).evaporatorOutlet(none())),
                change(
                        FindingCode.LOW_SUPERHEAT,
                        "superheat",
                        r -> r.suctionLine(265).evaporatorOutlet(none())),
                change(FindingCode.HIGH_SUPERHEAT, "superheat", r -> r.suctionLine(280)),
                change(FindingCode.HIGH_SUPERHEAT, "evaporatorSuperheat", r -> r.evaporatorOutlet(some(270))),
                change(FindingCode.LOW_SUPERHEAT, "evaporatorOutletTemperature", r -> r.evaporatorOutlet(some(263))),
                change(FindingCode.IMPLAUSIBLE_READING, "evaporatorOutletTemperature", r -> r.suctionLine(268.5)),
                change(FindingCode.HIGH_DISCHARGE_TEMPERATURE, "dischargeTemperature", r -> r.dischargeLine(some(381))),
                change(FindingCode.IMPLAUSIBLE_READING, "dischargeLineTemperature", r -> r.dischargeLine(some(313))),
                change(FindingCode.EFFICIENCY_IMPLAUSIBLE, "isentropicEfficiency", r -> r.dischargeLine(some(320))),
                change(
                        FindingCode.EFFICIENCY_IMPLAUSIBLE,
                        "isentropicEfficiency",
                        r -> r.suctionLine(360).dischargeLine(some(314))),
                change(FindingCode.LOW_EFFICIENCY, "isentropicEfficiency", r -> r.dischargeLine(some(395))),
                change(FindingCode.NO_SUBCOOLING, "subcooling", r -> r.liquidLine(some(313))),
                change(FindingCode.LOW_SUBCOOLING, "subcooling", r -> r.liquidLine(some(310))),
                change(FindingCode.HIGH_SUBCOOLING, "subcooling", r -> r.liquidLine(some(303))),
                change(FindingCode.IMPLAUSIBLE_READING, "liquidLineTemperature", r -> r.liquidLine(some(314))),
                change(FindingCode.IMPLAUSIBLE_READING, "liquidLineTemperature", r -> r.outdoor(308)),
                change(FindingCode.IMPLAUSIBLE_READING, "liquidLinePressure", r -> r.liquidPressure(some(1.05e6))),
                change(FindingCode.LIQUID_LINE_PRESSURE_ASSUMED, "liquidLinePressure", r -> r.liquidPressure(none())),
                change(FindingCode.FLASH_IN_LIQUID_LINE, "flashMargin", r -> r.liquidRun(12, 40e3)),
                change(FindingCode.HIGH_PRESSURE_RATIO, "pressureRatio", r -> r.suction(1.0130e5)),
                change(FindingCode.VACUUM_SUCTION, "suctionPressure", r -> r.suction(1.0130e5)),
                change(
                        FindingCode.NEAR_CRITICAL,
                        "condensing",
                        r -> r.discharge(3.7e6).dischargeLine(none())),
                change(FindingCode.ABOVE_CARNOT, "coefficientOfPerformance", r -> r.dischargeLine(some(314))),
                change(
                        FindingCode.HIGH_GLIDE,
                        "temperatureGlide",
                        r -> r.fluid(new GlidingFluid(3))
                                .suction(1.5e5)
                                .discharge(4e5)
                                .liquidLine(none())
                                .dischargeLine(none())),
                change(FindingCode.HIGH_CONDENSING_OVER_AMBIENT, "condensingOverAmbient", r -> r.outdoor(296)),
                change(FindingCode.IMPLAUSIBLE_READING, "outdoorAirTemperature", r -> r.outdoor(314)),
                change(
                        FindingCode.IMPLAUSIBLE_READING,
                        "condenserAir.leavingTemperature",
                        r -> r.condenserAir(airTemperatures(300, 299))),
                change(
                        FindingCode.IMPLAUSIBLE_READING,
                        "condenserAir.leavingTemperature",
                        r -> r.condenserAir(airTemperatures(300, 314))),
                change(
                        FindingCode.HIGH_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                        "evaporatorTemperatureDifference",
                        r -> r.evaporatorAir(airTemperatures(283, 275))),
                change(
                        FindingCode.IMPLAUSIBLE_READING,
                        "evaporatorAir.enteringTemperature",
                        r -> r.evaporatorAir(airTemperatures(263, 262))),
                change(
                        FindingCode.IMPLAUSIBLE_READING,
                        "evaporatorAir.leavingTemperature",
                        r -> r.evaporatorAir(airTemperatures(275, 276))),
                change(
                        FindingCode.IMPLAUSIBLE_READING,
                        "evaporatorAir.leavingTemperature",
                        r -> r.evaporatorAir(airTemperatures(275, 262))),
                change(FindingCode.FROST, "evaporating", r -> r.evaporatorAir(airTemperatures(296, 288))),
                change(FindingCode.APPROXIMATION, "condenserAir", r -> r.condenserAir(airStream(300, 308, 1))),
                change(FindingCode.APPROXIMATION, "evaporatorAir", r -> r.evaporatorAir(airStream(275, 268, 1))),
                change(
                        FindingCode.VOLUMETRIC_EFFICIENCY_ASSUMED,
                        "volumetricEfficiency",
                        r -> r.displacement(0.004, none())),
                change(
                        FindingCode.LOW_VOLUMETRIC_EFFICIENCY,
                        "volumetricEfficiency",
                        r -> r.displacement(0.004, some(0.45))));
    }

    @ParameterizedTest
    @MethodSource("findings")
    void aFindingOnTheFarSideOfItsLimit(FindingCode code, String subject, UnaryOperator<TestReadings> change) {
        assertThat(change.apply(TestReadings.sound()).findings())
                .filteredOn(
                        finding -> finding.code() == code && finding.subject().equals(subject))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.message()).doesNotContainPattern("[0-9]");
                    assertThat(finding.basis()).isNotBlank();
                });
    }

    static Stream<Arguments> nearSides() {
        return Stream.of(
                change(
                        FindingCode.LIQUID_AT_COMPRESSOR,
                        "",
                        r -> r.suctionLine(263.2).evaporatorOutlet(none())),
                change(FindingCode.LOW_SUPERHEAT, "", r -> r.suctionLine(266).evaporatorOutlet(none())),
                change(FindingCode.HIGH_SUPERHEAT, "", r -> r.suctionLine(279.7)),
                change(FindingCode.IMPLAUSIBLE_READING, "", r -> r.suctionLine(268.7)),
                change(FindingCode.HIGH_DISCHARGE_TEMPERATURE, "", r -> r.dischargeLine(some(380))),
                change(FindingCode.IMPLAUSIBLE_READING, "", r -> r.dischargeLine(some(313.3))),
                change(FindingCode.EFFICIENCY_IMPLAUSIBLE, "", r -> r.dischargeLine(some(330))),
                change(FindingCode.LOW_EFFICIENCY, "", r -> r.dischargeLine(some(350))),
                change(FindingCode.NO_SUBCOOLING, "", r -> r.liquidLine(some(312.9))),
                change(FindingCode.IMPLAUSIBLE_READING, "", r -> r.liquidLine(some(313.4))),
                change(FindingCode.IMPLAUSIBLE_READING, "", r -> r.outdoor(307)),
                change(FindingCode.FLASH_IN_LIQUID_LINE, "", r -> r.liquidRun(8, 40e3)),
                change(FindingCode.VACUUM_SUCTION, "", r -> r.suction(1.0135e5)),
                change(FindingCode.ABOVE_CARNOT, "", r -> r.dischargeLine(some(326))),
                change(
                        FindingCode.HIGH_GLIDE,
                        "",
                        r -> r.fluid(new GlidingFluid(2.7))
                                .suction(1.5e5)
                                .discharge(4e5)
                                .liquidLine(none())
                                .dischargeLine(none())),
                change(FindingCode.HIGH_CONDENSING_OVER_AMBIENT, "", r -> r.outdoor(297)),
                change(
                        FindingCode.HIGH_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                        "",
                        r -> r.evaporatorAir(airTemperatures(282, 275))),
                change(FindingCode.FROST, "", r -> r.evaporatorAir(airTemperatures(282, 275))),
                change(FindingCode.APPROXIMATION, "", r -> r.condenserAir(measuredHeat(300, 5e3))),
                change(FindingCode.LOW_VOLUMETRIC_EFFICIENCY, "", r -> r.displacement(0.004, some(0.55))));
    }

    @ParameterizedTest
    @MethodSource("nearSides")
    void noFindingOnTheNearSide(FindingCode code, String subject, UnaryOperator<TestReadings> change) {
        assertThat(change.apply(TestReadings.sound()).findings())
                .extracting(Finding::code)
                .doesNotContain(code);
    }

    @Test
    void liquidAtTheCompressorIsADanger() {
        assertThat(TestReadings.sound()
                        .suctionLine(260)
                        .evaporatorOutlet(none())
                        .findings())
                .filteredOn(finding -> finding.severity() == Severity.DANGER)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo(FindingCode.LIQUID_AT_COMPRESSOR);
                    assertThat(finding.value().orElseThrow()).isNegative();
                    assertThat(finding.limit()).hasValue(0);
                });
    }

    @Test
    void routesMoreThanTenPercentApartAreNamed() {
        double flow = 0.02;
        TestReadings readings = TestReadings.sound();
        double work = readings.result().perMass().compressorWork().orElseThrow();
        double swept = flow / readings.result().points().get(0).state().density();
        TestReadings base = readings.displacement(swept, some(1));
        assertThat(codes(base.electricity(CompressorKind.HERMETIC, 1.09 * flow * work, none())))
                .doesNotContain(FindingCode.HEAT_BALANCE_OFF);
        assertThat(base.electricity(CompressorKind.HERMETIC, 1.13 * flow * work, none())
                        .findings())
                .filteredOn(finding -> finding.code() == FindingCode.HEAT_BALANCE_OFF)
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("displacement and electrical power"));
    }

    /** A coil that also dries the air takes up more than its sensible heat: that alone is no fault. */
    @Test
    void aBoundExplainsADifferenceOnItsSide() {
        double flow = 0.02;
        TestReadings readings = TestReadings.sound();
        double effect = readings.result().perMass().refrigeratingEffect().orElseThrow();
        double swept = flow / readings.result().points().get(0).state().density();
        TestReadings base = readings.displacement(swept, some(1));
        double dryFlow = flow * effect / 1006 / 6;
        assertThat(codes(base.evaporatorAir(airStream(275, 269, 0.7 * dryFlow))))
                .doesNotContain(FindingCode.HEAT_BALANCE_OFF);
        assertThat(codes(base.evaporatorAir(airStream(275, 269, 1.3 * dryFlow))))
                .contains(FindingCode.HEAT_BALANCE_OFF);
    }

    private static Stream<FindingCode> codes(TestReadings readings) {
        return readings.findings().stream().map(Finding::code);
    }

    private static Arguments change(FindingCode code, String subject, UnaryOperator<TestReadings> change) {
        return Arguments.of(code, subject, change);
    }
}
