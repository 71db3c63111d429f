package io.loopstate.engine.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The short ways of a compressor's iteration against the long ones that they stand for. */
class DisplacerWorkTest {
    static Stream<Displacer> displacers() {
        return Stream.of(
                Machines.piston(0.05, 0.75),
                new Piston(0.005, 0.04, 8e3, 12e3, 0.02, OptionalDouble.of(0.8), OptionalDouble.empty()),
                new Piston(0.005, 0.04, 8e3, 12e3, 0.02, OptionalDouble.empty(), OptionalDouble.of(1.1)),
                new Rotor(0.005, 0.95, OptionalDouble.empty(), 0.7),
                new Rotor(0.005, 0.95, OptionalDouble.of(1.8), 0.7),
                new Rotor(0.005, 0.95, OptionalDouble.of(4), 0.7),
                new Impeller(0.5, 200, 2, OptionalDouble.empty(), 0.78));
    }

    @ParameterizedTest
    @MethodSource("displacers")
    void workAloneIsThatOfTheStroke(Displacer displacer) {
        for (String refrigerant : new String[] {"R-134a", "R-454B"}) {
            Equilibrium equilibrium = TestFluids.of(refrigerant);
            State port = vapor(equilibrium, 273.15, 12);
            for (double ratio : new double[] {2, 4, 7}) {
                double pressure = ratio * port.pressure();
                double work = displacer.stroke(equilibrium, port, pressure).work();
                assertThat(displacer.work(equilibrium, port, pressure)).isCloseTo(work, within(1e-9 * work));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-134a", "R-717", "R-744", "R-454B", "R-448A"})
    void densityOnTheIsentropeIsThatOfTheGeneralWay(String refrigerant) {
        Equilibrium equilibrium = TestFluids.of(refrigerant);
        // from superheated and from wet vapor, compressed and expanded, the latter into the dome
        State dry = vapor(equilibrium, 253.15, 8);
        State wet = equilibrium.state(Variable.TEMPERATURE, 263.15, Variable.VAPOR_QUALITY, 0.9);
        for (State from : new State[] {dry, wet}) {
            for (double ratio : new double[] {0.4, 1, 1.5, 3}) {
                State found = IsentropicDensity.state(equilibrium, from, ratio * from.density());
                State general = equilibrium.state(
                        Variable.DENSITY, ratio * from.density(), Variable.SPECIFIC_ENTROPY, from.specificEntropy());
                assertThat(found.temperature()).isCloseTo(general.temperature(), within(1e-8 * found.temperature()));
                assertThat(found.pressure()).isCloseTo(general.pressure(), within(1e-8 * found.pressure()));
                assertThat(found.phase()).isEqualTo(general.phase());
            }
        }
    }

    private static State vapor(Equilibrium equilibrium, double dewTemperature, double superheat) {
        double pressure =
                equilibrium.saturationAtTemperature(dewTemperature).dew().pressure();
        return equilibrium.atPressureTemperature(pressure, dewTemperature + superheat);
    }
}
