package io.loopstate.engine.cycle;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Citation;
import io.loopstate.engine.numerics.Search;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Collects the steps of one calculation. */
public final class Working {
    private final List<Step> steps = new ArrayList<>();
    private final String equationOfState;

    /** For a calculation without a refrigerant: every step names its own source. */
    public Working() {
        equationOfState = "";
    }

    /** For a calculation whose properties come from this equilibrium. */
    public Working(Equilibrium equilibrium) {
        equationOfState = equilibrium.refrigerant().sources().stream()
                .map(Citation::text)
                .collect(Collectors.joining("; ", "equation of state: ", ""));
    }

    /** A property read from the equation of state. */
    public Step.Term property(String name, String formula, Step.Term result, Step.Term... inputs) {
        return formula(name, formula, equationOfState, result, inputs);
    }

    /** An arithmetic step; returns its result as an input of later steps. */
    public Step.Term formula(String name, String formula, String source, Step.Term result, Step.Term... inputs) {
        steps.add(new Step(name, formula, List.of(inputs), result, source));
        return result;
    }

    /**
     * What was iterated: where between which ends, in how many trials, and what was left of the equation.
     *
     * @param equation that had to become zero
     * @param symbol of the unknown
     */
    public Step.Term search(String name, String equation, Search search, String symbol, QuantityKind kind) {
        return formula(
                name + ", by trial inside a bracket",
                equation,
                "R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4 (from memory)",
                of(symbol, search.root(), kind),
                of(symbol + "_low", search.lower(), kind),
                of(symbol + "_high", search.upper(), kind),
                ratio("trials", search.trials()),
                ratio("residual", search.residual()));
    }

    /**
     * The enthalpy of a state from whatever fixes it: pressure and temperature, or pressure and the side of the dome.
     *
     * @param place what follows the letter of each symbol but that of the pressure
     */
    public Step.Term enthalpyOf(String name, String place, Step.Term pressure, State state) {
        Step.Term enthalpy = enthalpy("h" + place, state.specificEnthalpy());
        if (!state.saturated()) {
            Step.Term temperature = temperature("T" + place, state.temperature());
            String formula = "%s = h(%s, %s)".formatted(enthalpy.symbol(), pressure.symbol(), temperature.symbol());
            return property(name, formula, enthalpy, pressure, temperature);
        }
        if (state.phase() == Phase.TWO_PHASE) {
            Step.Term quality = ratio("x" + place, state.vaporQuality());
            String formula = "%s = h(%s, %s)".formatted(enthalpy.symbol(), pressure.symbol(), quality.symbol());
            return property(name, formula, enthalpy, pressure, quality);
        }
        String side = state.phase() == Phase.VAPOR ? "h_dew" : "h_bubble";
        return property(name, enthalpy.symbol() + " = " + side + "(" + pressure.symbol() + ")", enthalpy, pressure);
    }

    /** The steps so far. */
    public List<Step> toList() {
        return List.copyOf(steps);
    }

    /** A term of this kind. */
    public static Step.Term temperature(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.TEMPERATURE);
    }

    /** A term of this kind. */
    public static Step.Term difference(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.TEMPERATURE_DIFFERENCE);
    }

    /** A term of this kind. */
    public static Step.Term pressure(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.PRESSURE);
    }

    /** A term of this kind. */
    public static Step.Term pressureDrop(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.PRESSURE_DIFFERENCE);
    }

    /** A term of this kind. */
    public static Step.Term enthalpy(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.SPECIFIC_ENTHALPY);
    }

    /** A term of this kind. */
    public static Step.Term entropy(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.SPECIFIC_ENTROPY);
    }

    /** A term of this kind. */
    public static Step.Term energy(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.SPECIFIC_ENERGY);
    }

    /** A term of this kind. */
    public static Step.Term ratio(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.RATIO);
    }

    /** A term of this kind. */
    public static Step.Term power(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.POWER);
    }

    /** A term of this kind. */
    public static Step.Term massFlow(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.MASS_FLOW);
    }

    /** A term of this kind. */
    public static Step.Term volumeFlow(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.VOLUME_FLOW);
    }

    /** A term of this kind. */
    public static Step.Term specificVolume(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.SPECIFIC_VOLUME);
    }

    /** A term of this kind. */
    public static Step.Term density(String symbol, double value) {
        return new Step.Term(symbol, value, QuantityKind.DENSITY);
    }

    /** A term of any kind. */
    public static Step.Term of(String symbol, double value, QuantityKind kind) {
        return new Step.Term(symbol, value, kind);
    }
}
