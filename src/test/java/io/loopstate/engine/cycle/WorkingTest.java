package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.TestReadings.airStream;
import static io.loopstate.engine.cycle.TestReadings.none;
import static io.loopstate.engine.cycle.TestReadings.some;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.component.SuctionLineGain;
import io.loopstate.engine.cycle.Step.Term;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The working shows true arithmetic: every formula, evaluated with the numbers beside it, gives the result beside it. */
class WorkingTest {
    private static final Pattern PROPERTY = Pattern.compile("[A-Za-z_]+\\(.*");

    static Stream<List<Step>> workings() {
        TestCycles sound = TestCycles.sound().explained();
        TestReadings readings = TestReadings.sound().explained();
        return Stream.of(
                sound.result().steps(),
                sound.losses(TestCycles.everyLoss())
                        .size(Size.massFlow(0.05))
                        .result()
                        .steps(),
                sound.size(Size.refrigeratingCapacity(5e3)).result().steps(),
                sound.volumetricEfficiency(0.8)
                        .size(Size.displacement(0.004))
                        .result()
                        .steps(),
                sound.evaporatorOutlet(OutletCondition.quality(0.95)).result().steps(),
                sound.condenserOutlet(OutletCondition.subcooling(0)).result().steps(),
                sound.compressor(new CompressorModel(CompressorKind.HERMETIC, 0.7, 0.1, none(), some(0.9)))
                        .result()
                        .steps(),
                TestCycles.transcritical().explained().result().steps(),
                sound.losses(LineLosses.none().withSuctionLineGain(SuctionLineGain.temperatureRise(10)))
                        .condensing(SaturationLevel.pressure(10e5))
                        .result()
                        .steps(),
                sound.losses(LineLosses.none().withSuctionLineGain(SuctionLineGain.compressorInletTemperature(285)))
                        .condenserOutlet(OutletCondition.temperature(300))
                        .result()
                        .steps(),
                sound.compressor(new CompressorModel(CompressorKind.OPEN, 0.7, 0, some(0.8), some(0.9)))
                        .size(Size.massFlow(0.05))
                        .result()
                        .steps(),
                readings.result().steps(),
                readings.evaporatorOutlet(none())
                        .liquidPressure(none())
                        .result()
                        .steps(),
                readings.outdoor(300)
                        .displacement(0.004, some(0.8))
                        .electricity(CompressorKind.OPEN, 1000, some(0.9))
                        .condenserAir(new AirStream(some(300), some(308), some(0.5), none(), none()))
                        .evaporatorAir(airStream(275, 270, 0.4))
                        .result()
                        .steps());
    }

    @ParameterizedTest
    @MethodSource("workings")
    void everyFormulaGivesItsResult(List<Step> steps) {
        assertThat(steps).hasSizeGreaterThan(5);
        for (Step step : steps) {
            String[] sides = step.formula().split(" = ", 2);
            assertThat(sides[0]).isEqualTo(step.result().symbol());
            assertThat(step.source()).isNotBlank();
            if (!PROPERTY.matcher(sides[1]).matches()) {
                double value = Arithmetic.evaluate(
                        sides[1], step.inputs().stream().collect(Collectors.toMap(Term::symbol, Term::value)));
                assertThat(value)
                        .as(step.toString())
                        .isCloseTo(step.result().value(), within(1e-8 * Math.abs(value) + 1e-9));
            }
        }
    }

    /** What may be put in without a step before it: what the caller gives, and the volume of the vapor drawn in. */
    private static final Set<String> GIVEN = Set.of(
            "pe",
            "pc",
            "Te",
            "Tc",
            "superheat",
            "subcooling",
            "x5",
            "x3c",
            "T1",
            "T2",
            "T3",
            "T5",
            "T3c",
            "dT",
            "p1",
            "p2",
            "p3",
            "dp_1",
            "dp_2",
            "dp_3c",
            "dp_4",
            "q_suction",
            "q_discharge",
            "q_liquid",
            "eta",
            "eta_s",
            "eta_motor",
            "eta_v",
            "f",
            "m",
            "Q",
            "V",
            "v1",
            "entering",
            "leaving",
            "Tair",
            "Tmid",
            "V_condenser",
            "rho",
            "m_evaporator",
            "cp",
            "P_electrical");

    /** A number put in is either given or the result of an earlier step, under the same symbol and with the same value. */
    @ParameterizedTest
    @MethodSource("workings")
    void stepsBuildOnEachOther(List<Step> steps) {
        Map<String, Term> known = new HashMap<>();
        for (Step step : steps) {
            for (Term input : step.inputs()) {
                Term earlier = known.get(input.symbol());
                if (earlier == null) {
                    assertThat(GIVEN).as(step.toString()).contains(input.symbol());
                } else {
                    assertThat(input.kind()).isEqualTo(earlier.kind());
                    assertThat(input.value())
                            .as(step.toString())
                            .isCloseTo(earlier.value(), within(1e-8 * Math.abs(earlier.value())));
                }
            }
            known.put(step.result().symbol(), step.result());
        }
    }

    @Test
    void theLastWordsAreThoseOfTheResult() {
        DesignCycle.Result result = TestCycles.sound().explained().result();
        assertThat(step(result.steps(), "COP").result().value())
                .isEqualTo(result.performance().coefficientOfPerformance());
        assertThat(step(result.steps(), "T2").result().value())
                .isEqualTo(result.performance().dischargeTemperature());
        FieldReadings.Result readings = TestReadings.sound().explained().result();
        assertThat(step(readings.steps(), "superheat").result().value()).isEqualTo(readings.superheat());
        assertThat(step(readings.steps(), "subcooling").result().value())
                .isEqualTo(readings.subcooling().orElseThrow());
        assertThat(step(readings.steps(), "superheat").inputs())
                .extracting(Term::symbol)
                .containsExactly("T1", "Tdew");
    }

    @Test
    void propertiesNameTheEquationOfState() {
        assertThat(step(TestCycles.sound().explained().result().steps(), "h2s").source())
                .contains("equation of state", "Tillner-Roth");
    }

    @Test
    void thereIsNoWorkingUnlessAskedFor() {
        assertThat(TestCycles.sound().result().steps()).isEmpty();
        assertThat(TestReadings.sound().result().steps()).isEmpty();
    }

    private static Step step(List<Step> steps, String symbol) {
        return steps.stream()
                .filter(step -> step.result().symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
