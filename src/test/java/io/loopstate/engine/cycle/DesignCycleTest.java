package io.loopstate.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationBasis;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.component.SuctionLineGain;
import io.loopstate.engine.cycle.DesignCycle.Performance;
import io.loopstate.engine.cycle.DesignCycle.Result;
import io.loopstate.engine.cycle.DesignCycle.Sizing;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws that hold for every design cycle; published cycles are in {@link DesignExamplesTest}. */
class DesignCycleTest {
    static Stream<TestCycles> cycles() {
        return Stream.of("R-134a", "R-22", "R-717", "R-290", "R-1234yf", "R-32", "R-12")
                .flatMap(fluid -> Stream.of(
                        TestCycles.of(fluid, 253.15, 308.15),
                        TestCycles.of(fluid, 278.15, 323.15).losses(TestCycles.everyLoss()),
                        TestCycles.of(fluid, 268.15, 318.15)
                                .compressor(new CompressorModel(
                                        CompressorKind.HERMETIC,
                                        0.75,
                                        0.08,
                                        OptionalDouble.of(0.8),
                                        OptionalDouble.of(0.88)))))
                .flatMap(cycle -> Stream.of(cycle, cycle.evaporatorOutlet(OutletCondition.quality(0.9))));
    }

    static Stream<TestCycles> allCycles() {
        return Stream.concat(
                cycles(),
                Stream.of(TestCycles.transcritical(), TestCycles.transcritical().losses(TestCycles.everyLoss())));
    }

    @ParameterizedTest
    @MethodSource("allCycles")
    void energyIsConserved(TestCycles cycle) {
        Result result = cycle.size(Size.massFlow(0.05)).result();
        Performance performance = result.performance();
        double in = performance.refrigeratingEffect()
                + performance.suctionLineHeatGain()
                + performance.compressorWork()
                + performance.liquidLineHeatGain();
        double out = performance.heatRejectionPerMass()
                + performance.dischargeLineHeatLoss()
                + performance.compressorHeatLoss();
        assertThat(in).isCloseTo(out, within(1e-8 * out));
        assertThat(performance.heatRejection().total())
                .isCloseTo(performance.heatRejectionPerMass(), within(1e-8 * out));
        assertThat(performance.suctionLineHeatGain())
                .isCloseTo(cycle.losses().suctionLineGain().value(), within(1e-3));
        assertThat(performance.dischargeLineHeatLoss()).isCloseTo(cycle.losses().dischargeLineHeatLoss(), within(1e-3));
        assertThat(performance.liquidLineHeatGain()).isCloseTo(cycle.losses().liquidLineHeatGain(), within(1e-3));
    }

    /** Over the whole loop without outside heat but at the coils: entropy rises in the compressor and in the valve. */
    @ParameterizedTest
    @MethodSource("allCycles")
    void entropyNeverFallsInCompressorAndValve(TestCycles cycle) {
        Result result = cycle.efficiency(0.8).result();
        assertThat(entropy(result, PointName.COMPRESSOR_OUTLET))
                .isGreaterThan(entropy(result, PointName.COMPRESSOR_INLET));
        assertThat(entropy(result, PointName.ISENTROPIC_COMPRESSOR_OUTLET))
                .isCloseTo(entropy(result, PointName.COMPRESSOR_INLET), within(1e-6));
        assertThat(entropy(result, PointName.EVAPORATOR_INLET)).isGreaterThan(entropy(result, PointName.VALVE_INLET));
    }

    @ParameterizedTest
    @MethodSource("cycles")
    void noCycleWithoutSubcoolingBeatsCarnot(TestCycles cycle) {
        Performance performance = cycle.efficiency(1)
                .condenserOutlet(OutletCondition.subcooling(0))
                .losses(LineLosses.none())
                .evaporatorOutlet(OutletCondition.superheat(0))
                .result()
                .performance();
        assertThat(performance.carnotShare().orElseThrow()).isBetween(0.5, 1.0);
    }

    @ParameterizedTest
    @MethodSource("allCycles")
    void losesFollowTheEfficiency(TestCycles cycle) {
        Performance worse = cycle.efficiency(0.6).result().performance();
        Performance better = cycle.efficiency(0.8).result().performance();
        assertThat(better.coefficientOfPerformance()).isGreaterThan(worse.coefficientOfPerformance());
        assertThat(better.dischargeTemperature()).isLessThanOrEqualTo(worse.dischargeTemperature());
        assertThat(better.heatRejectionFactor()).isLessThan(worse.heatRejectionFactor());
        assertThat(better.refrigeratingEffect()).isEqualTo(worse.refrigeratingEffect());
        assertThat(better.compressorWork() * 0.8).isCloseTo(worse.compressorWork() * 0.6, within(1e-6));
    }

    @Test
    void pointsStandInTheDirectionOfFlowWithTheirOwnMargins() {
        Result result = TestCycles.sound().losses(TestCycles.everyLoss()).result();
        assertThat(result.points())
                .extracting(Point::name)
                .containsExactly(
                        PointName.COMPRESSOR_INLET,
                        PointName.COMPRESSOR_OUTLET,
                        PointName.CONDENSER_INLET,
                        PointName.CONDENSER_OUTLET,
                        PointName.VALVE_INLET,
                        PointName.EVAPORATOR_INLET,
                        PointName.EVAPORATOR_OUTLET,
                        PointName.ISENTROPIC_COMPRESSOR_OUTLET);
        assertThat(result.point(PointName.EVAPORATOR_OUTLET).superheat()).hasValueCloseTo(6.0, within(1e-6));
        assertThat(result.point(PointName.CONDENSER_OUTLET).subcooling()).hasValueCloseTo(6.0, within(1e-6));
        assertThat(result.point(PointName.COMPRESSOR_INLET).superheat().orElseThrow())
                .isGreaterThan(6);
        assertThat(result.point(PointName.EVAPORATOR_INLET).superheat()).isEmpty();
        assertThat(result.point(PointName.EVAPORATOR_INLET).subcooling()).isEmpty();
        assertThat(result.performance().evaporatorInletQuality().orElseThrow())
                .isEqualTo(result.point(PointName.EVAPORATOR_INLET).state().vaporQuality());
    }

    @Test
    void pressureDropsStandWhereTheyArise() {
        Result result = TestCycles.sound().losses(TestCycles.everyLoss()).result();
        double evaporating = result.evaporating().pressure();
        double condensing = result.condensing().orElseThrow().pressure();
        assertPressure(result, PointName.EVAPORATOR_OUTLET, evaporating);
        assertPressure(result, PointName.COMPRESSOR_INLET, evaporating - 6e3);
        assertPressure(result, PointName.EVAPORATOR_INLET, evaporating + 8e3);
        assertPressure(result, PointName.CONDENSER_INLET, condensing);
        assertPressure(result, PointName.COMPRESSOR_OUTLET, condensing + 12e3);
        assertPressure(result, PointName.CONDENSER_OUTLET, condensing - 15e3);
        assertPressure(result, PointName.VALVE_INLET, condensing - 24e3);
        assertThat(result.evaporating().dew()).isCloseTo(263.15, within(1e-8));
        assertThat(result.condensing().orElseThrow().dew()).isCloseTo(313.15, within(1e-8));
    }

    /** Heat taken up outside the cooled space costs capacity of the compressor and cools nothing. */
    @Test
    void superheatOutsideTheSpaceIsNotUseful() {
        Performance inside = TestCycles.sound()
                .evaporatorOutlet(OutletCondition.superheat(16))
                .result()
                .performance();
        Performance outside = TestCycles.sound()
                .losses(LineLosses.none().withSuctionLineGain(SuctionLineGain.temperatureRise(10)))
                .result()
                .performance();
        assertThat(outside.dischargeTemperature()).isCloseTo(inside.dischargeTemperature(), within(1e-6));
        assertThat(outside.compressorWork()).isCloseTo(inside.compressorWork(), within(1e-4));
        assertThat(outside.refrigeratingEffect() + outside.suctionLineHeatGain())
                .isCloseTo(inside.refrigeratingEffect(), within(1e-4));
        assertThat(outside.volumetricCapacity()).isLessThan(inside.volumetricCapacity());
    }

    @Test
    void theThreeSizesAgree() {
        TestCycles cycle = TestCycles.sound().volumetricEfficiency(0.8);
        Sizing byCapacity =
                cycle.size(Size.refrigeratingCapacity(10e3)).result().sizing().orElseThrow();
        Sizing byFlow = cycle.size(Size.massFlow(byCapacity.massFlow()))
                .result()
                .sizing()
                .orElseThrow();
        Sizing byDisplacement = cycle.size(
                        Size.displacement(byCapacity.displacement().orElseThrow()))
                .result()
                .sizing()
                .orElseThrow();
        assertThat(byCapacity.refrigeratingCapacity()).isCloseTo(10e3, within(1e-6));
        assertThat(byFlow.refrigeratingCapacity()).isCloseTo(10e3, within(1e-6));
        assertThat(byDisplacement.refrigeratingCapacity()).isCloseTo(10e3, within(1e-6));
        assertThat(byCapacity.suctionVolumeFlow())
                .isCloseTo(0.8 * byCapacity.displacement().orElseThrow(), within(1e-12));
        Performance performance = cycle.result().performance();
        assertThat(byCapacity.suctionVolumeFlow() * performance.volumetricCapacity())
                .isCloseTo(10e3, within(1e-6));
        assertThat(byCapacity.compressorPower() * performance.coefficientOfPerformance())
                .isCloseTo(10e3, within(1e-6));
    }

    @Test
    void electricalPowerOfOpenAndHermeticMachines() {
        Size size = Size.massFlow(0.05);
        assertThat(TestCycles.sound().size(size).result().sizing().orElseThrow().electricalPower())
                .isEmpty();
        Sizing open =
                withMotor(CompressorKind.OPEN).size(size).result().sizing().orElseThrow();
        Sizing hermetic =
                withMotor(CompressorKind.HERMETIC).size(size).result().sizing().orElseThrow();
        assertThat(open.electricalPower().orElseThrow()).isCloseTo(open.compressorPower() / 0.9, within(1e-9));
        assertThat(hermetic.electricalPower().orElseThrow())
                .isEqualTo(hermetic.compressorPower())
                .isCloseTo(open.electricalPower().orElseThrow(), within(1e-6));
        assertThat(hermetic.heatRejected()).isGreaterThan(open.heatRejected());
    }

    /** 12 000 Btu/h per ton: EER times kW per ton is 12, users' formula C8, by definition. */
    @Test
    void ratiosOfPerformance() {
        Performance performance = TestCycles.sound().result().performance();
        assertThat(performance.energyEfficiencyRatio() * performance.powerPerTon() / 1e3)
                .isCloseTo(12, within(1e-9));
        // 3.412 Btu/h per W: NIST Special Publication 811.
        assertThat(performance.energyEfficiencyRatio() / performance.coefficientOfPerformance())
                .isCloseTo(3.412, within(5e-4));
        assertThat(performance.heatRejectionFactor())
                .isCloseTo(1 + 1 / performance.coefficientOfPerformance(), within(1e-9));
        assertThat(performance.carnotCoefficientOfPerformance().orElseThrow()).isCloseTo(263.15 / 50, within(1e-6));
    }

    @Test
    void aTranscriticalCycleHasAGasCooler() {
        Result result = TestCycles.transcritical().result();
        assertThat(result.condensing()).isEmpty();
        assertThat(result.points())
                .extracting(Point::name)
                .contains(PointName.GAS_COOLER_INLET, PointName.GAS_COOLER_OUTLET)
                .doesNotContain(PointName.CONDENSER_INLET, PointName.CONDENSER_OUTLET);
        assertThat(result.point(PointName.GAS_COOLER_OUTLET).state().temperature())
                .isCloseTo(308.15, within(1e-9));
        assertThat(result.point(PointName.GAS_COOLER_OUTLET).subcooling()).isEmpty();
        Performance performance = result.performance();
        assertThat(performance.heatRejection().gasCooling()).isEqualTo(performance.heatRejectionPerMass());
        assertThat(performance.carnotCoefficientOfPerformance().orElseThrow())
                .isCloseTo(263.15 / (308.15 - 263.15), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"313.15, 313.15", "313.15, 263.15"})
    void theRefrigerantMustCondenseWarmer(double evaporating, double condensing) {
        EngineException fault = fault(TestCycles.of("R-134a", evaporating, condensing));
        assertThat(fault.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
        assertThat(fault.input()).contains("condensing");
        assertThat(fault.got()).isEqualTo(condensing);
        assertThat(fault.lower()).isEqualTo(evaporating);
    }

    @Test
    void faultsNameTheirInput() {
        TestCycles sound = TestCycles.sound();
        assertFault(sound.condensing(SaturationLevel.temperature(400)), ErrorCode.ABOVE_CRITICAL, "condensing");
        assertFault(sound.evaporating(SaturationLevel.temperature(100)), ErrorCode.OUT_OF_RANGE, "evaporating");
        assertFault(
                sound.condensing(SaturationLevel.pressure(60e5)),
                ErrorCode.CONTRADICTORY_INPUTS,
                "gasCoolerOutletTemperature");
        assertFault(
                sound.evaporatorOutlet(OutletCondition.temperature(250)),
                ErrorCode.CONTRADICTORY_INPUTS,
                "evaporatorOutlet");
        assertFault(
                sound.condenserOutlet(OutletCondition.temperature(320)),
                ErrorCode.CONTRADICTORY_INPUTS,
                "condenserOutlet");
        assertFault(sound.condenserOutlet(OutletCondition.subcooling(200)), ErrorCode.OUT_OF_RANGE, "condenserOutlet");
        assertFault(sound.evaporatorOutlet(OutletCondition.superheat(400)), ErrorCode.OUT_OF_RANGE, "evaporatorOutlet");
        assertFault(sound.efficiency(0.02), ErrorCode.OUT_OF_RANGE, "isentropicEfficiency");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "suctionLinePressureDrop",
                "condenserPressureDrop",
                "evaporatorPressureDrop",
                "liquidLinePressureDrop"
            })
    void dropsMustLeaveAPressure(String input) {
        double drop = 9e5;
        LineLosses losses = new LineLosses(
                input.startsWith("evaporator") ? drop : 0,
                input.startsWith("suction") ? drop : 0,
                0,
                input.startsWith("condenser") ? drop : 0,
                input.startsWith("liquid") ? drop : 0,
                SuctionLineGain.none(),
                0,
                0);
        assertFault(TestCycles.sound().losses(losses), ErrorCode.CONTRADICTORY_INPUTS, input);
    }

    @Test
    void aCycleThatCoolsNothingIsRefused() {
        assertFault(
                TestCycles.transcritical().condenserOutlet(OutletCondition.temperature(420)),
                ErrorCode.CONTRADICTORY_INPUTS,
                "condenserOutlet");
    }

    private static TestCycles withMotor(CompressorKind kind) {
        return TestCycles.sound()
                .compressor(new CompressorModel(kind, 0.7, 0, OptionalDouble.empty(), OptionalDouble.of(0.9)));
    }

    private static double entropy(Result result, PointName name) {
        return result.point(name).state().specificEntropy();
    }

    private static void assertPressure(Result result, PointName name, double pressure) {
        assertThat(result.point(name).state().pressure()).as(name.name()).isCloseTo(pressure, within(1e-3));
    }

    private static void assertFault(TestCycles cycle, ErrorCode code, String input) {
        EngineException fault = fault(cycle);
        assertThat(fault.input()).contains(input);
        assertThat(fault.code()).as(fault.getMessage()).isEqualTo(code);
    }

    private static EngineException fault(TestCycles cycle) {
        EngineException[] caught = new EngineException[1];
        assertThatThrownBy(cycle::result)
                .isInstanceOfSatisfying(EngineException.class, exception -> caught[0] = exception);
        return caught[0];
    }

    /** Both definitions, applied to the cycle they lead to. */
    @ParameterizedTest
    @ValueSource(strings = {"R-448A", "R-407C", "R-454B", "R-455A", "R-513A", "R-134a"})
    void theMeanFromInletToDewIsMetByTheCycleItLeadsTo(String refrigerant) {
        double mean = 263.15;
        TestCycles cycle = TestCycles.of(refrigerant, mean, 313.15);
        SaturationLevel level = SaturationLevel.temperature(mean, SaturationBasis.INLET_TO_DEW);
        for (LineLosses losses : new LineLosses[] {LineLosses.none(), TestCycles.everyLoss()}) {
            Result result = cycle.losses(losses).evaporating(level).result();
            double inlet = result.point(PointName.EVAPORATOR_INLET).state().temperature();
            assertThat((inlet + result.evaporating().dew()) / 2).isCloseTo(mean, within(1e-8));
        }
        double dew = pressure(cycle);
        double fromInlet = pressure(cycle.evaporating(level));
        double midpoint = pressure(cycle.evaporating(SaturationLevel.temperature(mean, SaturationBasis.MIDPOINT)));
        if (refrigerant.equals("R-134a")) {
            assertThat(fromInlet).isCloseTo(dew, within(1e-9 * dew));
        } else {
            // some of the glide is used up in the valve
            assertThat(fromInlet).isStrictlyBetween(dew, midpoint);
        }
    }

    private static double pressure(TestCycles cycle) {
        return cycle.result().evaporating().pressure();
    }

    @Test
    void aCondenserHasNoMeanFromInletToDew() {
        TestCycles cycle =
                TestCycles.sound().condensing(SaturationLevel.temperature(313.15, SaturationBasis.INLET_TO_DEW));
        assertThatThrownBy(cycle::result).isInstanceOf(EngineException.class).hasMessageContaining("evaporator");
    }
}
