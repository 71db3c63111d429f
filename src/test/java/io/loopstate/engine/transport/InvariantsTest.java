package io.loopstate.engine.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Fluid;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every fluid, whatever its correlations. */
class InvariantsTest {
    /** mol/m3, 25 parts in a billion of the density of a gas at room conditions. */
    private static final double DILUTE = 1e-6;

    static List<String> withViscosity() {
        return Fixtures.withViscosity();
    }

    static List<String> withConductivity() {
        return Fixtures.withConductivity();
    }

    static List<String> withSurfaceTension() {
        return Fixtures.withSurfaceTension();
    }

    static List<String> withCriticalEnhancement() {
        return withConductivity().stream()
                .filter(d -> Fixtures.fluid(d)
                        .transport()
                        .orElseThrow()
                        .objects("thermalConductivity")
                        .get(0)
                        .has("critical"))
                .filter(d -> !d.equals("R-718"))
                .toList();
    }

    @Test
    void countsOfTheData() {
        // counts stated in the documentation of the data
        assertThat(withViscosity()).hasSize(46);
        assertThat(withConductivity()).hasSize(44);
        assertThat(withSurfaceTension()).hasSize(63);
    }

    @Test
    void nothingIsAnsweredWithoutACorrelation() {
        for (Fluid fluid : Fixtures.fluids()) {
            TransportProperties transport = TransportProperties.of(fluid, Fixtures.CATALOG);
            String name = fluid.designation();
            MolarState state = Fixtures.grid(fluid).get(0);
            TransportValues values = transport.at(state);

            assertThat(transport.viscositySource().isPresent())
                    .isEqualTo(withViscosity().contains(name));
            assertThat(transport.thermalConductivitySource().isPresent())
                    .isEqualTo(withConductivity().contains(name));
            assertThat(transport.surfaceTensionSource().isPresent())
                    .isEqualTo(withSurfaceTension().contains(name));
            if (!withViscosity().contains(name)) {
                assertThat(values).isEqualTo(TransportValues.NONE);
            }
            if (!withSurfaceTension().contains(name)) {
                assertThat(transport.surfaceTension(fluid.limits().minTemperature()))
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("withViscosity")
    void finiteAndPositiveOverTheWholeRange(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        TransportProperties transport = TransportProperties.of(fluid, Fixtures.CATALOG);
        int viscosities = 0;
        int conductivities = 0;
        for (MolarState state : Fixtures.grid(fluid)) {
            TransportValues values = transport.at(state);
            values.viscosity().ifPresent(v -> assertPhysical(v, state));
            values.thermalConductivity().ifPresent(v -> assertPhysical(v, state));
            viscosities += values.viscosity().isPresent() ? 1 : 0;
            conductivities += values.thermalConductivity().isPresent() ? 1 : 0;
        }

        assertThat(viscosities).isGreaterThan(200);
        if (transport.thermalConductivitySource().isPresent()) {
            assertThat(conductivities).isGreaterThan(200);
        }
    }

    private static void assertPhysical(double value, MolarState state) {
        assertThat(value).as("%s", state).isFinite().isPositive();
    }

    @ParameterizedTest
    @MethodSource("withViscosity")
    void theDiluteLimitExistsAndRisesWithTemperature(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        Viscosity viscosity = Fixtures.viscosity(fluid);
        double low = fluid.limits().minTemperature();
        double high = fluid.limits().maxTemperature();
        double previous = 0;
        for (int i = 0; i <= 20; i++) {
            double temperature = low + (high - low) * i / 20;
            double dilute = viscosity.at(Fixtures.point(fluid, temperature, DILUTE));
            double thinner = viscosity.at(Fixtures.point(fluid, temperature, DILUTE / 1000));

            assertThat(dilute).isGreaterThan(previous).isCloseTo(thinner, within(1e-6 * dilute));
            previous = dilute;
        }
    }

    /** From the normal boiling point, where tables of refrigerants begin, to near the critical point. */
    @ParameterizedTest
    @MethodSource("withViscosity")
    void saturatedLiquidThinsWithTemperature(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        Viscosity viscosity = Fixtures.viscosity(fluid);
        double critical = fluid.criticalPoint().temperature();
        double low = Math.max(fluid.limits().minTemperature(), 0.6 * critical);
        double previous = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 30; i++) {
            double temperature = low + (0.99 * critical - low) * i / 30;
            double density = Fixtures.liquidDensity(fluid, temperature);
            double value = viscosity.at(Fixtures.point(fluid, temperature, density));

            assertThat(value).as("at %s K", temperature).isPositive().isLessThan(previous);
            previous = value;
        }
    }

    @ParameterizedTest
    @MethodSource("withViscosity")
    void continuousAlongIsotherms(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        TransportProperties transport = TransportProperties.of(fluid, Fixtures.CATALOG);
        double temperature = Math.min(
                1.1 * fluid.criticalPoint().temperature(), fluid.limits().maxTemperature());
        double density = 1.5 * fluid.criticalMolarDensity();
        double previous = Double.NaN;
        for (int j = 0; j < 800; j++) {
            MolarState state = Fixtures.state(fluid, temperature, density);
            density *= 0.99;
            boolean answered = state.pressureByDensity() > 0
                    && state.pressure() < fluid.limits().maxPressure();
            double value = answered ? transport.viscosity(state).orElse(Double.NaN) : Double.NaN;
            if (!Double.isNaN(previous) && !Double.isNaN(value)) {
                // in the dense fluid viscosity goes with a power of density, seldom above the third
                assertThat(value).isCloseTo(previous, within(0.04 * value));
            }
            previous = value;
        }
        assertThat(previous).isPositive();
    }

    @ParameterizedTest
    @MethodSource("withCriticalEnhancement")
    void theCriticalEnhancementIsNeverNegative(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        Viscosity viscosity = Fixtures.viscosity(fluid);
        CriticalEnhancement enhancement = new CriticalEnhancement(
                fluid.transport()
                        .orElseThrow()
                        .objects("thermalConductivity")
                        .get(0)
                        .object("critical"),
                fluid.model());
        for (MolarState state : Fixtures.grid(fluid)) {
            double eta = viscosity.at(Fixtures.point(fluid, state.temperature(), state.density()));
            if (eta > 0) {
                assertThat(enhancement.at(state, eta)).as("%s", state).isNotNegative();
            }
        }
        double nearCritical = 1.005 * fluid.criticalPoint().temperature();
        MolarState state = Fixtures.state(fluid, nearCritical, fluid.criticalMolarDensity());
        double eta = viscosity.at(Fixtures.point(fluid, nearCritical, fluid.criticalMolarDensity()));
        double whole =
                Fixtures.conductivity(fluid).at(Fixtures.point(fluid, nearCritical, fluid.criticalMolarDensity()), eta);
        assertThat(enhancement.at(state, eta)).isBetween(0.1 * whole, 0.9 * whole);
    }

    @ParameterizedTest
    @MethodSource("withSurfaceTension")
    void surfaceTensionFallsToNothing(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        TransportProperties transport = TransportProperties.of(fluid, Fixtures.CATALOG);
        double critical = Math.min(
                fluid.criticalPoint().temperature(),
                fluid.transport().orElseThrow().object("surfaceTension").number("Tc"));
        double low = fluid.limits().minTemperature();
        double previous = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 40; i++) {
            double temperature = low + (critical - low) * i / 40;
            OptionalDouble value = transport.surfaceTension(temperature);

            // some correlations of several terms reach zero below the critical point, that of R-764 at 0.97
            if (temperature < 0.96 * critical) {
                assertThat(value).as("at %s K", temperature).isPresent();
            }
            value.ifPresent(v -> assertThat(v).isPositive());
            assertThat(value.orElse(0)).as("at %s K", temperature).isLessThan(previous);
            previous = value.orElse(previous);
        }
        double end = Math.min(critical, fluid.limits().maxTemperature());
        assertThat(transport.surfaceTension(end).orElse(0)).isLessThan(1e-4);
        if (end == critical) {
            assertThat(transport.surfaceTension(end)).isEmpty();
        }
    }
}
