package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.TestReadings.airStream;
import static io.loopstate.engine.cycle.TestReadings.none;
import static io.loopstate.engine.cycle.TestReadings.some;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.cycle.Step.Term;
import java.util.List;
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

    /** A number put in is either a given or the result of an earlier step, under the same symbol and with the same value. */
    @ParameterizedTest
    @MethodSource("workings")
    void stepsBuildOnEachOther(List<Step> steps) {
        for (int i = 0; i < steps.size(); i++) {
            for (Term input : steps.get(i).inputs()) {
                steps.subList(0, i).stream()
                        .map(Step::result)
                        .filter(result -> result.symbol().equals(input.symbol()))
                        .reduce((first, last) -> last)
                        .ifPresent(result -> {
                            assertThat(input.kind()).isEqualTo(result.kind());
                            assertThat(input.value())
                                    .as(input.symbol())
                                    .isCloseTo(result.value(), within(1e-8 * Math.abs(result.value())));
                        });
            }
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
