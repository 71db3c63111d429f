package io.loopstate.reference;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.FluidReader;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.engine.fluid.ReferenceState;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;

/** Fluids by the names that the tables of published values use. */
final class Fluids {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final Equilibria EQUILIBRIA = new Equilibria();

    private Fluids() {}

    /** Catalogued, or one of the pseudo-pure blends that only tests know; empty for a mixture of components. */
    static Optional<Fluid> find(String name) {
        String designation = name.startsWith("air") ? "Air" : name;
        Optional<Fluid> fluid = CATALOG.find(designation);
        return fluid.isPresent() ? fluid : pseudoPure(designation);
    }

    /** A blend by its pseudo-pure equation, which only tests know. */
    static Fluid pseudoPureBlend(String designation) {
        return pseudoPure(designation).orElseThrow();
    }

    private static Optional<Fluid> pseudoPure(String designation) {
        try (InputStream stream = Fluids.class.getResourceAsStream(
                "/fluids/" + designation.toLowerCase(Locale.ROOT).replace('/', '_') + ".json")) {
            return stream == null ? Optional.empty() : Optional.of(FluidReader.read(stream));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Equilibrium equilibrium(Fluid fluid) {
        return EQUILIBRIA.of(fluid, Equilibria.defaultReference(fluid));
    }

    /** With limits beyond those stated, to compute where a paper does so. */
    static Equilibrium widened(Fluid fluid) {
        Limits limits = fluid.limits();
        return equilibrium(fluid.withLimits(
                new Limits(limits.minTemperature(), limits.maxTemperature() * 1.3, limits.maxPressure() * 20)));
    }

    /** With the stated limits if they cover a pressure (Pa) and temperature (K), else with wider ones. */
    static Equilibrium covering(Fluid fluid, double pressure, double temperature) {
        Limits limits = fluid.limits();
        boolean covered = pressure <= limits.maxPressure()
                && temperature >= limits.minTemperature()
                && temperature <= limits.maxTemperature();
        return covered ? equilibrium(fluid) : widened(fluid);
    }

    static Equilibrium equilibrium(Fluid fluid, ReferenceState reference) {
        return EQUILIBRIA.of(fluid, reference);
    }

    /**
     * What to add to enthalpy (J/mol) and entropy (J/(mol K)) of the equation as published to count from the datum of a row.
     */
    record Datum(double enthalpy, double entropy) {
        static Datum of(Fluid fluid, String text) {
            if (text.isEmpty() || text.startsWith("constants of the equation")) {
                return new Datum(0, 0);
            }
            if (text.startsWith("IIR")) {
                return shift(fluid, equilibrium(fluid, ReferenceState.IIR));
            }
            if (text.startsWith("ASHRAE")) {
                return shift(fluid, equilibrium(fluid, ReferenceState.ASHRAE));
            }
            if (text.contains("normal boiling point")) {
                return shift(fluid, equilibrium(fluid, ReferenceState.NORMAL_BOILING_POINT));
            }
            if (text.contains("triple point")) {
                return triplePoint(fluid);
            }
            return idealGas(fluid, text);
        }

        private static Datum shift(Fluid fluid, Equilibrium equilibrium) {
            double t = fluid.criticalPoint().temperature();
            var state = equilibrium.state(Variable.TEMPERATURE, t, Variable.DENSITY, 1e-3 * fluid.molarMass());
            var raw = fluid.model().isotherm(t).state(1e-3);
            return new Datum(
                    state.specificEnthalpy() * fluid.molarMass() - raw.enthalpy(),
                    state.specificEntropy() * fluid.molarMass() - raw.entropy());
        }

        /** u = 0, s = 0 of the saturated liquid. */
        private static Datum triplePoint(Fluid fluid) {
            double t = fluid.limits().minTemperature();
            double density =
                    equilibrium(fluid).saturationAtTemperature(t).bubble().density() / fluid.molarMass();
            var raw = fluid.model().isotherm(t).state(density);
            return new Datum(-raw.internalEnergy(), -raw.entropy());
        }

        /** Given values at a temperature and pressure of the ideal gas. */
        private static Datum idealGas(Fluid fluid, String text) {
            double h0 = text.startsWith("h0=") ? number(text, "h0=") : 0;
            double s0 = text.contains("s0=") ? number(text, "s0=") : 0;
            double t = number(text, "ideal gas at ");
            double p = number(text.substring(text.indexOf(" K and ")), " K and ") * 1e6;
            double density = 1e-6;
            var raw = fluid.model().isotherm(t).state(density);
            double r = fluid.model().gasConstant();
            double entropy = raw.entropy() - r * Math.log(p / (density * r * t));
            return new Datum(h0 - raw.enthalpy(), s0 - entropy);
        }

        private static double number(String text, String before) {
            String rest = text.substring(text.indexOf(before) + before.length());
            return Double.parseDouble(rest.split("[ ,]")[0]);
        }
    }
}
