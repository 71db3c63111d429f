package io.loopstate.wiring;

import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.DesignCycle;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.ReferenceState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/**
 * A few published values, asked of the engine alone: a pure refrigerant, a blend and a cycle. They were chosen because the
 * engine meets them to the last printed digit, and because they cost little of a start.
 */
final class SelfCheck {
    private static final double ZERO_CELSIUS = 273.15;
    /** Half a unit of the last digit but one: sums of doubles do not hold the last on every processor. */
    private static final double ROUNDING = 0.5e-13;

    private final Catalog catalog;
    private final Equilibria equilibria;
    private final List<Value> values;

    SelfCheck(Catalog catalog, Equilibria equilibria) {
        this.catalog = catalog;
        this.equilibria = equilibria;
        values = List.of(
                // E. W. Lemmon, M. O. McLinden, W. Wagner, J. Chem. Eng. Data 54 (2009) 3141: values for verifying
                // programs
                new Value(
                        "LMW2009: pressure of R-290 at 200 K and 617.33868 kg/m3, MPa",
                        "2.3795138",
                        0.5e-7,
                        this::propane),
                // I. H. Bell, J. Phys. Chem. Ref. Data 51 (2022) 013103, table XI
                new Value(
                        "BELL2022: residual Helmholtz energy of R-134a/1234ze(E), 0.4/0.6 by mole, at 472 K and 3.639 mol/L",
                        "-0.46245130334193",
                        ROUNDING,
                        this::blend),
                // C. Borgnakke, R. E. Sonntag, Fundamentals of Thermodynamics, 7th ed., 2009, example 11.6
                new Value(
                        "BORG: coefficient of performance of R-134a between -20 and 40 degC",
                        "3.06",
                        0.5e-2,
                        this::cycle));
    }

    /**
     * A value.
     *
     * @param name source and what it is
     * @param printed digit for digit
     * @param tolerance half a unit of the last printed digit, but for what is said beside the value
     * @param calculated in the unit of the print
     */
    record Value(String name, String printed, double tolerance, DoubleSupplier calculated) {
        /** What is wrong with it, in words; empty where it rounds to the print. */
        Optional<String> failure() {
            try {
                double found = calculated.getAsDouble();
                double difference = found - Double.parseDouble(printed);
                return Math.abs(difference) <= tolerance
                        ? Optional.empty()
                        : Optional.of(
                                name + ": printed " + printed + ", calculated " + found + ", difference " + difference);
            } catch (RuntimeException e) {
                return Optional.of(name + ": printed " + printed + ", not calculated: " + e);
            }
        }
    }

    List<Value> values() {
        return values;
    }

    /** What is not as printed, in words. */
    static List<String> failures(List<Value> values) {
        List<String> failures = new ArrayList<>();
        values.forEach(value -> value.failure().ifPresent(failures::add));
        return failures;
    }

    private double propane() {
        Fluid propane = catalog.find("R-290").orElseThrow();
        MolarState state = propane.model().isotherm(200).state(617.33868 / propane.molarMass());
        return state.pressure() / 1e6;
    }

    private double blend() {
        List<String> names = List.of("R-134a", "R-1234ze(E)");
        double first = 0.4 * catalog.find(names.get(0)).orElseThrow().molarMass();
        double second = 0.6 * catalog.find(names.get(1)).orElseThrow().molarMass();
        double mass = first + second;
        Mixture mixture = catalog.mixture(new Composition(names, List.of(first / mass, second / mass)));
        return mixture.model()
                .at(mixture.moleFractions())
                .isotherm(472)
                .residual(3.639e3)
                .value();
    }

    private double cycle() {
        return DesignCycle.calculate(new DesignCycle.Spec(
                        equilibria.of(catalog.find("R-134a").orElseThrow(), ReferenceState.IIR),
                        SaturationLevel.temperature(ZERO_CELSIUS - 20),
                        SaturationLevel.temperature(ZERO_CELSIUS + 40),
                        OutletCondition.superheat(0),
                        OutletCondition.subcooling(0),
                        CompressorModel.of(1),
                        LineLosses.none(),
                        Optional.empty(),
                        101_325,
                        Guidance.common(),
                        false))
                .performance()
                .coefficientOfPerformance();
    }
}
