package io.loopstate.engine.transport;

import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.FluidReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Fluids and states that the tests share. */
final class Fixtures {
    static final Catalog CATALOG = Catalog.bundled();

    private static final List<String> PSEUDO_PURE_FILES = List.of("r-404a", "r-407c", "r-410a", "r-507a");
    private static final List<Fluid> PSEUDO_PURE =
            PSEUDO_PURE_FILES.stream().map(Fixtures::fluidOfFile).toList();

    private Fixtures() {}

    static Fluid fluid(String designation) {
        return Stream.concat(PSEUDO_PURE.stream(), CATALOG.find(designation).stream())
                .filter(f -> f.designation().equals(designation))
                .findFirst()
                .orElseThrow();
    }

    static Fluid fluidOfFile(String name) {
        try (InputStream stream = Fixtures.class.getResourceAsStream("/fluids/" + name + ".json")) {
            return FluidReader.read(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static TransportProperties transport(String designation) {
        return TransportProperties.of(fluid(designation), CATALOG);
    }

    /** Every fluid of the catalog and the pseudo-pure ones of the tests. */
    static List<Fluid> fluids() {
        List<Fluid> fluids = new ArrayList<>(CATALOG.all());
        fluids.addAll(PSEUDO_PURE);
        return fluids;
    }

    static List<String> withViscosity() {
        return having("viscosity");
    }

    static List<String> withConductivity() {
        return having("thermalConductivity");
    }

    static List<String> withSurfaceTension() {
        return having("surfaceTension");
    }

    /** Fluids with a corresponding-states correlation. */
    static List<String> conformal() {
        return fluids().stream()
                .filter(f -> new TransportReader(f, CATALOG).referenceFluid().isPresent())
                .map(Fluid::designation)
                .toList();
    }

    private static List<String> having(String member) {
        return fluids().stream()
                .filter(f -> f.transport().filter(t -> t.has(member)).isPresent())
                .map(Fluid::designation)
                .toList();
    }

    static MolarState state(Fluid fluid, double temperature, double density) {
        return fluid.model().isotherm(temperature).state(density);
    }

    /** The point that the correlations of a fluid read, whatever the limits say. */
    static Point point(Fluid fluid, double temperature, double density) {
        MolarState state = state(fluid, temperature, density);
        return new Point(
                state,
                new TransportReader(fluid, CATALOG)
                        .referenceFluid()
                        .map(reference -> new ConformalStateSolver(fluid, reference).solve(state)));
    }

    static Viscosity viscosity(Fluid fluid) {
        return new TransportReader(fluid, CATALOG).viscosities().get(0).formula();
    }

    static ThermalConductivity conductivity(Fluid fluid) {
        return new TransportReader(fluid, CATALOG).conductivities().get(0).formula();
    }

    /** Saturated liquid: the density of the equation at the auxiliary equation's bubble pressure, mol/m3. */
    static double liquidDensity(Fluid fluid, double temperature) {
        return densityAt(
                fluid,
                temperature,
                fluid.auxiliaries().bubblePressure().at(temperature),
                fluid.auxiliaries().liquidDensity().at(temperature));
    }

    /** Saturated vapor: the density of the equation at the auxiliary equation's dew pressure, mol/m3. */
    static double vaporDensity(Fluid fluid, double temperature) {
        return densityAt(
                fluid,
                temperature,
                fluid.auxiliaries().dewPressure().at(temperature),
                fluid.auxiliaries().vaporDensity().at(temperature));
    }

    private static double densityAt(Fluid fluid, double temperature, double pressure, double start) {
        Isotherm isotherm = fluid.model().isotherm(temperature);
        double density = start;
        for (int k = 0; k < 30; k++) {
            Isotherm.Pressure p = isotherm.pressure(density);
            density -= (p.value() - pressure) / p.slope();
        }
        return density;
    }

    /**
     * Single-phase states over the whole range of the equation of state: 20 temperatures by 40 densities, spaced evenly in
     * the logarithm from the vapor and above the critical temperature, evenly from the saturated to the most compressed
     * liquid.
     */
    static List<MolarState> grid(Fluid fluid) {
        List<MolarState> states = new ArrayList<>();
        double low = fluid.limits().minTemperature();
        double high = fluid.limits().maxTemperature();
        for (int i = 0; i <= 20; i++) {
            double temperature = low * Math.pow(high / low, i / 20.0);
            Isotherm isotherm = fluid.model().isotherm(temperature);
            for (double density : densities(fluid, temperature, isotherm)) {
                MolarState state = isotherm.state(density);
                if (state.pressureByDensity() > 0
                        && state.pressure() > 0
                        && state.pressure() < fluid.limits().maxPressure()) {
                    states.add(state);
                }
            }
        }
        return states;
    }

    private static List<Double> densities(Fluid fluid, double temperature, Isotherm isotherm) {
        double most = fluid.maxMolarDensity().orElse(4 * fluid.criticalMolarDensity());
        while (isotherm.pressure(most).value() > fluid.limits().maxPressure()) {
            most *= 0.99;
        }
        boolean subcritical = temperature < fluid.criticalPoint().temperature();
        double thin = subcritical ? 0.98 * fluid.auxiliaries().vaporDensity().at(temperature) : most;
        double dense = 1.02 * fluid.auxiliaries().liquidDensity().at(temperature);
        List<Double> densities = new ArrayList<>();
        for (int j = 0; j < 40; j++) {
            boolean gas = !subcritical || j < 20;
            densities.add(gas ? thin * Math.pow(10, -j / 5.0) : dense + (most - dense) * (j - 20) / 20);
        }
        return densities;
    }
}
