package io.loopstate.engine.fluid;

import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.fluid.CompositionException.Reason;
import io.loopstate.engine.fluid.PairOrigin.Basis;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A mixture of given composition with its model.
 *
 * <p>Its range of temperature is the mole-weighted mean of the components' ranges, since a component far below its own range
 * at a small share is usual in blends (R-744 below its triple point); {@link #beyondOwnRange} names such components.
 */
public final class Mixture {
    private final String designation;
    private final List<Component> components;
    private final List<PairOrigin> pairs;
    private final MixtureModel model;
    /** Every state asks for these. */
    private final double molarMass;

    private final Limits limits;

    /**
     * @param designation ASHRAE 34 designation or the composition itself
     * @param components in the order of the designation
     * @param pairs every two components with the origin of their interaction
     * @param model equation of state for any composition of these components
     */
    public Mixture(String designation, List<Component> components, List<PairOrigin> pairs, MixtureModel model) {
        this.designation = designation;
        this.components = List.copyOf(components);
        this.pairs = List.copyOf(pairs);
        this.model = model;
        molarMass = this.components.stream()
                .mapToDouble(c -> c.moleFraction() * c.fluid().molarMass())
                .sum();
        limits = limits(this.components);
    }

    /** ASHRAE 34 designation or the composition itself. */
    public String designation() {
        return designation;
    }

    /** In the order of the designation. */
    public List<Component> components() {
        return components;
    }

    /** Every two components with the origin of their interaction. */
    public List<PairOrigin> pairs() {
        return pairs;
    }

    /** Equation of state for any composition of these components. */
    public MixtureModel model() {
        return model;
    }

    /**
     * A component with its share.
     *
     * @param massFraction kg/kg
     * @param moleFraction mol/mol
     */
    public record Component(Fluid fluid, double massFraction, double moleFraction) {}

    /** In the order of the components. */
    public double[] moleFractions() {
        return components.stream().mapToDouble(Component::moleFraction).toArray();
    }

    /** Molar mass, kg/mol. */
    public double molarMass() {
        return molarMass;
    }

    /** Means of the components' limits of temperature by mole, and the lowest of their highest pressures. */
    public Limits limits() {
        return limits;
    }

    private static Limits limits(List<Component> components) {
        double lowest = 0;
        double highest = 0;
        double pressure = Double.POSITIVE_INFINITY;
        for (Component c : components) {
            Limits limits = c.fluid().limits();
            lowest += c.moleFraction() * limits.minTemperature();
            highest += c.moleFraction() * limits.maxTemperature();
            pressure = Math.min(pressure, limits.maxPressure());
        }
        return new Limits(lowest, highest, pressure);
    }

    /** Designations of the components whose own range of temperature ends inside that of the mixture. */
    public List<String> beyondOwnRange() {
        return components.stream()
                .map(Component::fluid)
                .filter(f -> f.limits().minTemperature() > limits.minTemperature()
                        || f.limits().maxTemperature() < limits.maxTemperature())
                .map(Fluid::designation)
                .toList();
    }

    /** How well founded the model is. */
    public Accuracy accuracy() {
        return Accuracy.of(pairs);
    }

    /** The pairs that were not fitted to measurements. */
    public List<PairOrigin> unfittedPairs() {
        return pairs.stream().filter(p -> p.basis() != Basis.FITTED).toList();
    }

    /**
     * This mixture, if every pair of it was fitted to measurements.
     *
     * @throws CompositionException PAIR_NOT_FITTED, naming the pairs that were not
     */
    public Mixture requireFitted() {
        List<PairOrigin> others = unfittedPairs();
        if (others.isEmpty()) {
            return this;
        }
        String names = others.stream()
                .map(p -> p.first() + "/" + p.second()
                        + (p.basis() == Basis.MISSING ? " (not published)" : " (estimated)"))
                .collect(Collectors.joining(", "));
        throw new CompositionException(
                Reason.PAIR_NOT_FITTED,
                "not every pair of " + designation + " was fitted to measurements",
                names,
                "blends whose every pair was fitted",
                List.of());
    }

    /** Components and mass percents in the notation of ASHRAE 34, {@code R-32/125 (50/50)}. */
    public String notation() {
        return Composition.notation(components);
    }
}
