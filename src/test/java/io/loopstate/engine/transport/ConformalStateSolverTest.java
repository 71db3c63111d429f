package io.loopstate.engine.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.eos.Derivatives;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Fluid;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ConformalStateSolverTest {

    static List<String> conformal() {
        return Fixtures.conformal();
    }

    private static Fluid reference(Fluid fluid) {
        return new TransportReader(fluid, Fixtures.CATALOG).referenceFluid().orElseThrow();
    }

    private static double reducedTemperature(Fluid fluid, double temperature) {
        return temperature / fluid.criticalPoint().temperature();
    }

    /** alphar and Z of both fluids agree in every liquid and dense gas; hot R-14, far above nitrogen's range, aside. */
    @ParameterizedTest
    @MethodSource("conformal")
    void denseStatesAreExact(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        Fluid reference = reference(fluid);
        ConformalStateSolver solver = new ConformalStateSolver(fluid, reference);
        int checked = 0;
        for (MolarState state : Fixtures.grid(fluid)) {
            if (state.density() < 0.7 * fluid.criticalMolarDensity()
                    || reducedTemperature(fluid, state.temperature()) > 2.2) {
                continue;
            }
            ConformalState other = solver.solve(state);
            Derivatives r = reference.model().isotherm(other.temperature()).residual(other.density());
            double z = state.pressure() / (state.density() * fluid.model().gasConstant() * state.temperature());

            assertThat(r.value())
                    .isCloseTo(state.residualEnergy(), within(1e-10 * (1 + Math.abs(state.residualEnergy()))));
            assertThat(1 + r.d()).isCloseTo(z, within(1e-10 * (1 + Math.abs(z))));
            checked++;
        }
        assertThat(checked).isGreaterThan(100);
    }

    /** In a gas the temperature stays near that of equal reduced temperature, and something close is always found. */
    @ParameterizedTest
    @MethodSource("conformal")
    void gasesStayClose(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        Fluid reference = reference(fluid);
        ConformalStateSolver solver = new ConformalStateSolver(fluid, reference);
        for (MolarState state : Fixtures.grid(fluid)) {
            ConformalState other = solver.solve(state);
            double ratio =
                    reducedTemperature(reference, other.temperature()) / reducedTemperature(fluid, state.temperature());

            assertThat(Math.abs(Math.log(ratio))).isLessThanOrEqualTo(ConformalStateSolver.FARTHEST + 1e-12);
        }
    }

    /** Where the state goes over from exact to nearest, and from one bound to the other, viscosity has no step. */
    @ParameterizedTest
    @MethodSource("conformal")
    void noStepAlongTheSaturatedVapor(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        TransportProperties transport = TransportProperties.of(fluid, Fixtures.CATALOG);
        double low = fluid.limits().minTemperature();
        double high = 0.95 * fluid.criticalPoint().temperature();
        int steps = 1000;
        double previous = 0;
        double change = 0;
        for (int i = 0; i <= steps; i++) {
            double temperature = low + (high - low) * i / steps;
            double density = fluid.auxiliaries().vaporDensity().at(temperature);
            double value = transport
                    .viscosity(Fixtures.state(fluid, temperature, density))
                    .orElseThrow();
            if (i >= 2) {
                assertThat(value - previous).as("at %s K", temperature).isCloseTo(change, within(1.5e-3 * value));
            }
            change = value - previous;
            previous = value;
        }
    }

    /** A fluid is its own conformal state. */
    @ParameterizedTest
    @MethodSource("conformal")
    void theReferenceFluidMapsOntoItself(String designation) {
        Fluid reference = reference(Fixtures.fluid(designation));
        ConformalStateSolver solver = new ConformalStateSolver(reference, reference);
        double temperature = 0.8 * reference.criticalPoint().temperature();
        double density = Fixtures.liquidDensity(reference, temperature);

        ConformalState other = solver.solve(Fixtures.state(reference, temperature, density));

        assertThat(other.temperature()).isCloseTo(temperature, within(1e-9 * temperature));
        assertThat(other.density()).isCloseTo(density, within(1e-9 * density));
    }
}
