package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.TestReadings.none;
import static io.loopstate.engine.cycle.TestReadings.some;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.GlidingFluid;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.SuctionLineGain;
import io.loopstate.engine.cycle.DesignCycle.Sizing;
import io.loopstate.engine.cycle.FieldReadings.Bound;
import io.loopstate.engine.cycle.FieldReadings.Result;
import io.loopstate.engine.cycle.FieldReadings.Route;
import io.loopstate.engine.cycle.FieldReadings.RouteName;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import java.util.OptionalDouble;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Readings of a cycle that is known; published readings are in {@link ReadingsExamplesTest}. */
class FieldReadingsTest {
    /** Dry air, J/(kg K). Source: ASHRAE Handbook - Fundamentals 2017, chapter 1, equation 28 (from memory). */
    private static final double AIR_HEAT_CAPACITY = 1006;

    private static final TestCycles CYCLE = TestCycles.sound()
            .losses(LineLosses.none().withSuctionLineGain(SuctionLineGain.temperatureRise(5)))
            .compressor(new CompressorModel(CompressorKind.HERMETIC, 0.72, 0.05, some(0.85), some(0.9)))
            .size(Size.displacement(0.004));

    private final DesignCycle.Result designed = CYCLE.result();
    private final Sizing sizing = designed.sizing().orElseThrow();
    private final TestReadings readings = TestReadings.of(CYCLE.spec(), designed);

    @Test
    void readingsOfADesignedCycleGiveTheCycleBack() {
        Result result = readings.result();
        assertThat(result.superheat()).isCloseTo(11, within(1e-6));
        assertThat(result.evaporatorSuperheat()).hasValueCloseTo(6.0, within(1e-6));
        assertThat(result.subcooling()).hasValueCloseTo(6.0, within(1e-6));
        assertThat(result.flashMargin()).hasValueCloseTo(6.0, within(1e-6));
        assertThat(result.evaporating().dew()).isCloseTo(263.15, within(1e-6));
        assertThat(result.condensing().orElseThrow().dew()).isCloseTo(313.15, within(1e-6));
        assertThat(result.pressureRatio()).isEqualTo(designed.performance().pressureRatio());
        // Line to line a hermetic compressor shows the product of both efficiencies.
        assertThat(result.compression().orElseThrow().isentropicEfficiency()).isCloseTo(0.72 * 0.9, within(1e-7));
        assertThat(result.perMass().refrigeratingEffect())
                .hasValueCloseTo(designed.performance().refrigeratingEffect(), within(1e-2));
        assertThat(result.perMass().heatRejection())
                .hasValueCloseTo(designed.performance().heatRejectionPerMass(), within(1e-2));
        assertThat(result.perMass().coefficientOfPerformance())
                .hasValueCloseTo(designed.performance().coefficientOfPerformance(), within(1e-6));
        assertThat(result.perMass().evaporatorInletQuality().orElseThrow())
                .isCloseTo(designed.performance().evaporatorInletQuality().orElseThrow(), within(1e-7));
    }

    @Test
    void everyRouteLeadsToTheSameFlow() {
        double rise = 8;
        TestReadings full = readings.displacement(0.004, some(0.85))
                .electricity(CompressorKind.HERMETIC, sizing.electricalPower().orElseThrow(), none())
                .condenserAir(TestReadings.airStream(300, 300 + rise, sizing.heatRejected() / AIR_HEAT_CAPACITY / rise))
                .evaporatorAir(TestReadings.measuredHeat(275, sizing.refrigeratingCapacity()));
        Result result = full.result();
        assertThat(result.routes()).extracting(Route::name).containsExactly(RouteName.values());
        for (Route route : result.routes()) {
            assertThat(route.bound()).isEqualTo(Bound.NONE);
            assertThat(route.refrigeratingCapacity()).hasValueCloseTo(sizing.refrigeratingCapacity(), within(1e-3));
            assertThat(route.compressorPower()).hasValueCloseTo(sizing.compressorPower(), within(1e-3));
            if (route.name() != RouteName.EVAPORATOR_AIR_AND_ELECTRICAL_POWER) {
                assertThat(route.massFlow()).hasValueCloseTo(sizing.massFlow(), within(1e-7));
                assertThat(route.heatRejected()).hasValueCloseTo(sizing.heatRejected(), within(1e-3));
            }
        }
        // Evaporator and power leave out what the suction line takes up.
        double suctionLine = sizing.massFlow() * designed.performance().suctionLineHeatGain();
        assertThat(route(result, RouteName.EVAPORATOR_AIR_AND_ELECTRICAL_POWER).heatRejected())
                .hasValueCloseTo(sizing.heatRejected() - suctionLine, within(1e-3));
        assertThat(result.balances()).hasSize(8);
        assertThat(result.findings()).extracting(Finding::code).doesNotContain(FindingCode.HEAT_BALANCE_OFF);
    }

    @Test
    void aBalanceComparesTwoRoutes() {
        Result result = readings.displacement(0.004, some(0.85))
                .electricity(
                        CompressorKind.HERMETIC, 1.25 * sizing.electricalPower().orElseThrow(), none())
                .result();
        assertThat(result.balances()).singleElement().satisfies(balance -> {
            assertThat(balance.first()).isEqualTo(RouteName.DISPLACEMENT);
            assertThat(balance.second()).isEqualTo(RouteName.ELECTRICAL_POWER);
            assertThat(balance.difference()).isCloseTo(1 / 1.25 - 1, within(1e-6));
            assertThat(balance.secondHeat() / balance.firstHeat()).isCloseTo(1.25, within(1e-6));
        });
    }

    @Test
    void anOpenMachinesMotorHeatStaysOutside() {
        TestReadings open = TestReadings.sound();
        Route hermetic = electrical(open.electricity(CompressorKind.HERMETIC, 1000, none()));
        Route belted = electrical(open.electricity(CompressorKind.OPEN, 1000, some(0.85)));
        assertThat(belted.compressorPower()).hasValue(850);
        assertThat(belted.massFlow().orElseThrow())
                .isCloseTo(0.85 * hermetic.massFlow().orElseThrow(), within(1e-12));
        assertThat(electrical(open.electricity(CompressorKind.OPEN, 1000, none()))
                        .bound())
                .isEqualTo(Bound.UPPER);
    }

    /** Active power of one and three phases, by definition. */
    @Test
    void powerFromVoltageAndCurrent() {
        assertThat(Electricity.ofCurrent(230, 10, 1, 0.9).watt()).isCloseTo(2070, within(1e-9));
        assertThat(Electricity.ofCurrent(460, 10, 3, 0.85).watt()).isCloseTo(Math.sqrt(3) * 3910, within(1e-9));
        impossible(() -> Electricity.ofCurrent(460, 10, 2, 0.85), "electricity.phases");
        impossible(() -> Electricity.ofCurrent(460, 10, 3, 1.2), "electricity.powerFactor");
        OptionalDouble none = none();
        impossible(() -> new Electricity(some(1000), some(230), none, 1, none), "electricity.power");
        impossible(() -> new Electricity(none, some(230), none, 1, none), "electricity.powerFactor");
    }

    /** Standard air of the trade: 0.075 lb/ft3 at 70 degF and sea level; common practice, no source. */
    @Test
    void airIsAsDenseAsTheAtmosphereMakesIt() {
        AirStream air = new AirStream(some(294.26), some(302.26), some(1), none(), none());
        double density = TestReadings.sound()
                .condenserAir(air)
                .result()
                .condenserAirDensity()
                .orElseThrow();
        assertThat(density * 0.062428).isCloseTo(0.0750, within(5e-4));
        assertThat(air.massFlow(83_400).orElseThrow()).isCloseTo(density * 83_400 / 101_325, within(1e-9));
    }

    @Test
    void sensibleHeatOfADryCoilIsALowerBound() {
        Route route = route(
                TestReadings.sound()
                        .evaporatorAir(TestReadings.airStream(275, 270, 0.5))
                        .result(),
                RouteName.EVAPORATOR_AIR);
        assertThat(route.bound()).isEqualTo(Bound.LOWER);
        assertThat(route.refrigeratingCapacity()).hasValueCloseTo(0.5 * AIR_HEAT_CAPACITY * 5, within(1e-9));
        assertThat(route.assumptions()).hasSize(2);
    }

    @Test
    void pressuresAndTheSuctionLineAreEnough() {
        Result result = readings.dischargeLine(none())
                .liquidLine(none())
                .evaporatorOutlet(none())
                .result();
        assertThat(result.points()).extracting(Point::name).containsExactly(PointName.COMPRESSOR_INLET);
        assertThat(result.superheat()).isCloseTo(11, within(1e-6));
        assertThat(result.subcooling()).isEmpty();
        assertThat(result.compression()).isEmpty();
        assertThat(result.perMass().coefficientOfPerformance()).isEmpty();
        assertThat(result.routes()).isEmpty();
        assertThat(result.liquidLinePressureAssumed()).isFalse();
    }

    @Test
    void differencesToAirCountFromTheMidpoint() {
        double pressure = 3e5;
        double bubble = GlidingFluid.bubbleTemperature(pressure);
        Result result = TestReadings.sound()
                .fluid(new GlidingFluid(8))
                .suction(1e5)
                .discharge(pressure)
                .suctionLine(268)
                .dischargeLine(none())
                .evaporatorOutlet(none())
                .liquidLine(some(bubble - 5))
                .outdoor(bubble - 10)
                .evaporatorAir(TestReadings.airTemperatures(264, 260))
                .result();
        assertThat(result.superheat()).isCloseTo(268 - 258, within(1e-9));
        assertThat(result.subcooling()).hasValueCloseTo(5.0, within(1e-9));
        assertThat(result.condensingOverAmbient()).hasValueCloseTo(14.0, within(1e-9));
        assertThat(result.evaporatorTemperatureDifference()).hasValueCloseTo(264 - 254.0, within(1e-9));
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.HIGH_GLIDE);
    }

    @Test
    void aGasCoolerHasNoCondensingTemperature() {
        TestCycles transcritical = TestCycles.transcritical();
        Result result = TestReadings.of(transcritical.spec(), transcritical.result())
                .outdoor(303)
                .result();
        assertThat(result.condensing()).isEmpty();
        assertThat(result.subcooling()).isEmpty();
        assertThat(result.flashMargin()).isEmpty();
        assertThat(result.condensingOverAmbient()).isEmpty();
        assertThat(result.compression().orElseThrow().isentropicEfficiency()).isCloseTo(0.7, within(1e-7));
        assertThat(result.perMass().coefficientOfPerformance())
                .hasValueCloseTo(transcritical.result().performance().coefficientOfPerformance(), within(1e-6));
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.TRANSCRITICAL);
    }

    @Test
    void aWetSuctionIsTakenAsJustDry() {
        Result result =
                TestReadings.sound().suctionLine(262).evaporatorOutlet(none()).result();
        assertThat(result.superheat()).isCloseTo(-1.15, within(1e-6));
        assertThat(result.points().get(0).superheat()).hasValue(0);
        assertThat(result.points().get(0).state().vaporQuality()).isEqualTo(1);
    }

    @Test
    void contradictoryPressuresAreRefused() {
        TestReadings sound = TestReadings.sound();
        double suction = sound.pressures().suction();
        assertThatThrownBy(() -> sound.discharge(suction).result())
                .isInstanceOfSatisfying(EngineException.class, exception -> {
                    assertThat(exception.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
                    assertThat(exception.input()).contains("dischargePressure");
                    assertThat(exception.variable()).contains(Variable.PRESSURE);
                    assertThat(exception.got()).isEqualTo(suction);
                    assertThat(exception.lower()).isEqualTo(suction);
                });
        refused(sound.liquidPressure(some(0.9 * suction)), ErrorCode.CONTRADICTORY_INPUTS, "liquidLinePressure");
    }

    @Test
    void readingsOffTheModelNameThemselves() {
        TestReadings sound = TestReadings.sound();
        refused(sound.suction(10), ErrorCode.OUT_OF_RANGE, "suctionPressure");
        refused(sound.suctionLine(900), ErrorCode.OUT_OF_RANGE, "suctionLineTemperature");
        refused(sound.dischargeLine(some(900)), ErrorCode.OUT_OF_RANGE, "dischargeLineTemperature");
        refused(sound.liquidLine(some(50)), ErrorCode.OUT_OF_RANGE, "liquidLineTemperature");
        refused(sound.liquidRun(1000, 0), ErrorCode.CONTRADICTORY_INPUTS, "liquidLift");
    }

    @Test
    void impossibleNumbersNameThemselves() {
        TestReadings sound = TestReadings.sound();
        impossible(() -> sound.suction(-1), "suctionPressure");
        impossible(() -> sound.suctionLine(Double.NaN), "suctionLineTemperature");
        impossible(() -> sound.outdoor(0), "outdoorAirTemperature");
        impossible(() -> sound.displacement(0, none()), "displacement");
        impossible(() -> sound.displacement(1, some(1.1)), "volumetricEfficiency");
        impossible(() -> sound.condenserAir(TestReadings.airStream(300, 310, 0)), "condenserAir.massFlow");
        AirStream both = new AirStream(some(300), some(310), some(1), some(1), none());
        impossible(() -> sound.evaporatorAir(both), "evaporatorAir.massFlow");
        AirStream withoutTemperature = new AirStream(none(), some(310), some(1), none(), none());
        impossible(() -> sound.condenserAir(withoutTemperature), "condenserAir.enteringTemperature");
    }

    private static Route electrical(TestReadings readings) {
        return route(readings.result(), RouteName.ELECTRICAL_POWER);
    }

    private static Route route(Result result, RouteName name) {
        return result.routes().stream()
                .filter(route -> route.name() == name)
                .findFirst()
                .orElseThrow();
    }

    private static void refused(TestReadings readings, ErrorCode code, String input) {
        assertThatThrownBy(readings::result).isInstanceOfSatisfying(EngineException.class, exception -> {
            assertThat(exception.input()).contains(input);
            assertThat(exception.code()).as(exception.getMessage()).isEqualTo(code);
        });
    }

    private static void impossible(ThrowingCallable call, String input) {
        assertThatThrownBy(call)
                .isInstanceOfSatisfying(
                        EngineException.class,
                        exception -> assertThat(exception.input()).contains(input));
    }
}
