package io.loopstate.engine.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.diagram.Line.Kind;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every vertex lies on its line; lines end where the refrigerant has no state. The source of each check is a definition. */
class PropertyDiagramTest {
    private static final List<Double> TEMPERATURES = List.of(250.0, 270.0, 290.0, 310.0, 330.0, 350.0, 380.0, 420.0);
    private static final List<Double> ENTROPIES = List.of(1400.0, 1600.0, 1700.0, 1800.0, 1900.0, 2100.0);
    private static final List<Double> PRESSURES = List.of(3e5, 1e6, 2e6, 4e6, 9e6);
    private static final List<Double> QUALITIES = List.of(0.2, 0.5, 0.9);

    /** A refrigerant in a plane. */
    record Case(String refrigerant, Plane plane) {
        Equilibrium equilibrium() {
            return TestFluids.of(refrigerant, ReferenceState.IIR);
        }

        List<Line> lines() {
            Equilibrium equilibrium = equilibrium();
            double hot = 0.98 * equilibrium.refrigerant().criticalPoint().temperature();
            Window window = Window.around(
                    plane,
                    equilibrium,
                    List.of(
                            equilibrium.saturationAtTemperature(255).dew(),
                            equilibrium.saturationAtTemperature(hot).bubble()));
            return PropertyDiagram.draw(
                    new PropertyDiagram.Spec(equilibrium, window, TEMPERATURES, ENTROPIES, QUALITIES, PRESSURES));
        }
    }

    static Stream<Case> cases() {
        return Stream.of("R-134a", "R-744", "R-448A", "R-454B", "R-290", "R-514A")
                .flatMap(name -> Stream.of(Plane.values()).map(plane -> new Case(name, plane)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyVertexLiesOnItsLine(Case drawn) {
        List<Line> lines = drawn.lines();
        assertThat(lines).extracting(Line::kind).contains(Kind.BUBBLE, Kind.DEW, Kind.QUALITY);
        for (Line line : lines) {
            ToDoubleFunction<State> property = switch (line.kind()) {
                case ISOTHERM -> State::temperature;
                case ISOBAR -> State::pressure;
                case ISENTROPE -> State::specificEntropy;
                case QUALITY -> State::vaporQuality;
                case BUBBLE, DEW -> state -> Double.NaN;
            };
            if (!Double.isNaN(line.value())) {
                boolean toTheTop = line.kind() == Kind.QUALITY;
                // where the model has a critical state, lines of quality end in it, and it has no quality
                assertThat(line.states().subList(0, line.states().size() - (toTheTop ? 1 : 0)))
                        .allSatisfy(state -> assertThat(property.applyAsDouble(state) / line.value())
                                .as(line.kind().toString())
                                .isCloseTo(1, within(1e-7)));
            }
            assertThat(line.states().size()).isBetween(2, 200);
        }
    }

    /** A second way: the same place by pressure and temperature. */
    @ParameterizedTest
    @MethodSource("cases")
    void isentropeAgreesWithStatesByTemperature(Case drawn) {
        Equilibrium equilibrium = drawn.equilibrium();
        // the model of R-514A has a gap before its critical point, where a temperature is refused
        boolean gap = drawn.refrigerant().equals("R-514A");
        for (Line line : drawn.lines()) {
            if (line.kind() == Kind.ISENTROPE && !gap) {
                line.states().stream()
                        .filter(state -> !state.saturated())
                        .forEach(state -> assertThat(equilibrium
                                        .atPressureTemperature(state.pressure(), state.temperature())
                                        .specificEntropy())
                                .isCloseTo(line.value(), within(1e-5 * line.value())));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-134a", "R-744", "R-290", "R-32"})
    void isothermOfPureFluidIsLevelInsideTheDome(String refrigerant) {
        for (Line line : new Case(refrigerant, Plane.PRESSURE_ENTHALPY).lines()) {
            List<State> inside = line.states().stream().filter(State::saturated).toList();
            if (line.kind() == Kind.ISOTHERM && inside.size() > 1) {
                assertThat(inside)
                        .allSatisfy(state -> assertThat(
                                        state.pressure() / inside.get(0).pressure())
                                .isCloseTo(1, within(1e-9)));
            }
        }
    }

    /** At a temperature the bubble pressure of a zeotropic blend lies above its dew pressure. */
    @ParameterizedTest
    @ValueSource(strings = {"R-448A", "R-454B"})
    void isothermOfBlendRisesTowardTheLiquid(String refrigerant) {
        long crossing = new Case(refrigerant, Plane.PRESSURE_ENTHALPY)
                .lines().stream()
                        .filter(line -> line.kind() == Kind.ISOTHERM)
                        .map(line ->
                                line.states().stream().filter(State::saturated).toList())
                        .filter(inside -> inside.size() > 1)
                        .peek(inside -> assertThat(inside)
                                .extracting(State::pressure)
                                .isSorted()
                                .doesNotHaveDuplicates())
                        .count();
        assertThat(crossing).isGreaterThan(2);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void domeIsClosedAtTheCriticalPoint(Case drawn) {
        if (drawn.refrigerant().equals("R-514A")) {
            // its model has a false phase before the critical point, where the lines end
            return;
        }
        List<Line> lines = drawn.lines();
        State rising = last(lines, Kind.BUBBLE);
        State top = last(lines, Kind.DEW);
        assertThat(rising.specificEnthalpy()).isEqualTo(top.specificEnthalpy());
        assertThat(rising.temperature()
                        / drawn.equilibrium().refrigerant().criticalPoint().temperature())
                .isCloseTo(1, within(1e-3));
    }

    private static State last(List<Line> lines, Kind kind) {
        List<State> states = lines.stream()
                .filter(line -> line.kind() == kind)
                .reduce((a, b) -> b)
                .orElseThrow()
                .states();
        return states.get(states.size() - 1);
    }

    /** Carbon dioxide has no liquid below the pressure of its triple point, 0.518 MPa. */
    @Test
    void noLineIsContinuedBelowTheTriplePoint() {
        Equilibrium equilibrium = TestFluids.of("R-744", ReferenceState.IIR);
        Window window = new Window(Plane.PRESSURE_ENTHALPY, 50e3, 600e3, 1e5, 12e6);
        List<Line> lines = PropertyDiagram.draw(
                new PropertyDiagram.Spec(equilibrium, window, List.of(200.0, 250.0), List.of(), QUALITIES, List.of()));
        double lowest = equilibrium
                .saturationAtTemperature(equilibrium.refrigerant().minSaturationTemperature())
                .dew()
                .pressure();
        assertThat(lowest).isCloseTo(0.518e6, within(0.001e6));
        assertThat(lines).filteredOn(line -> line.kind() == Kind.QUALITY).hasSize(3);
        for (Line line : lines) {
            assertThat(line.value()).isNotEqualTo(200.0);
            if (line.kind() != Kind.ISOTHERM) {
                assertThat(line.states())
                        .allSatisfy(state -> assertThat(state.pressure()).isGreaterThanOrEqualTo(lowest * (1 - 1e-9)));
            }
        }
    }

    /** A valve keeps the enthalpy; a compression goes through its ends. */
    @Test
    void processGoesFromInletToOutlet() {
        Equilibrium equilibrium = TestFluids.of(
                "R-454B", Equilibria.defaultReference(TestFluids.of("R-454B").refrigerant()));
        State inlet = equilibrium.atPressureTemperature(9e5, 290);
        State outlet = equilibrium.atPressureTemperature(2.5e6, 350);
        State liquid = equilibrium.atPressureTemperature(2.5e6, 300);
        State mixture = equilibrium.atPressureEnthalpy(9e5, liquid.specificEnthalpy());
        Window window = Window.around(Plane.TEMPERATURE_ENTROPY, equilibrium, List.of(inlet, outlet, liquid, mixture));
        List<State> compression = ProcessLine.between(equilibrium, window, ProcessLine.Kind.COMPRESSION, inlet, outlet)
                .get(0);
        assertThat(compression.get(0)).isEqualTo(inlet);
        assertThat(compression.get(compression.size() - 1)).isEqualTo(outlet);
        assertThat(compression).extracting(State::pressure).isSorted();
        assertThat(ProcessLine.between(equilibrium, window, ProcessLine.Kind.THROTTLING, liquid, mixture)
                        .get(0))
                .hasSizeGreaterThan(4)
                .allSatisfy(state ->
                        assertThat(state.specificEnthalpy()).isCloseTo(liquid.specificEnthalpy(), within(1e-3)));
    }
}
