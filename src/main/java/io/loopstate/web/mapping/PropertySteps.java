package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.StateQuery;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Citation;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The working of a state and of a saturation: which numbers the equation of state gives for which. */
final class PropertySteps {
    private static final List<Variable> SHOWN = List.of(
            Variable.TEMPERATURE,
            Variable.PRESSURE,
            Variable.DENSITY,
            Variable.SPECIFIC_ENTHALPY,
            Variable.SPECIFIC_ENTROPY,
            Variable.VAPOR_QUALITY);

    private PropertySteps() {}

    /** Each property from the two that were given. */
    static List<Step> state(Equilibrium equilibrium, List<Variable> given, StateQuery.Result result) {
        List<Term> inputs =
                given.stream().map(variable -> term(variable, result)).toList();
        String arguments = inputs.stream().map(Term::symbol).collect(Collectors.joining(", ", "(", ")"));
        List<Step> steps = new ArrayList<>();
        for (Variable variable : SHOWN) {
            Term term = term(variable, result);
            if (!given.contains(variable) && !Double.isNaN(term.value())) {
                String formula = term.symbol() + " = " + term.symbol() + arguments;
                steps.add(new Step(variable.words(), formula, inputs, term, source(equilibrium)));
            }
        }
        return steps;
    }

    private static Term term(Variable variable, StateQuery.Result result) {
        State state = result.state();
        return switch (variable) {
            case TEMPERATURE -> new Term("T", state.temperature(), QuantityKind.TEMPERATURE);
            case PRESSURE -> new Term("p", state.pressure(), QuantityKind.PRESSURE);
            case DENSITY -> new Term("rho", state.density(), QuantityKind.DENSITY);
            case SPECIFIC_VOLUME -> new Term("v", state.specificVolume(), QuantityKind.SPECIFIC_VOLUME);
            case SPECIFIC_ENTHALPY -> new Term("h", state.specificEnthalpy(), QuantityKind.SPECIFIC_ENTHALPY);
            case SPECIFIC_ENTROPY -> new Term("s", state.specificEntropy(), QuantityKind.SPECIFIC_ENTROPY);
            case SPECIFIC_INTERNAL_ENERGY ->
                new Term("u", state.specificInternalEnergy(), QuantityKind.SPECIFIC_ENTHALPY);
            case VAPOR_QUALITY -> new Term("x", state.vaporQuality(), QuantityKind.RATIO);
            case SUPERHEAT ->
                new Term("superheat", result.superheat().orElseThrow(), QuantityKind.TEMPERATURE_DIFFERENCE);
            case SUBCOOLING ->
                new Term("subcooling", result.subcooling().orElseThrow(), QuantityKind.TEMPERATURE_DIFFERENCE);
        };
    }

    /** Both ends of the dome, then the latent heat. */
    static List<Step> saturation(Equilibrium equilibrium, boolean atPressure, Saturation saturation) {
        State bubble = saturation.bubble();
        State dew = saturation.dew();
        Term hBubble = new Term("h_bubble", bubble.specificEnthalpy(), QuantityKind.SPECIFIC_ENTHALPY);
        Term hDew = new Term("h_dew", dew.specificEnthalpy(), QuantityKind.SPECIFIC_ENTHALPY);
        Term latent = new Term("latentHeat", saturation.latentHeat(), QuantityKind.SPECIFIC_ENERGY);
        return List.of(
                edge(equilibrium, "bubble", atPressure, bubble),
                edge(equilibrium, "dew", atPressure, dew),
                new Step("latent heat", "latentHeat = h_dew - h_bubble", List.of(hDew, hBubble), latent, "definition"));
    }

    private static Step edge(Equilibrium equilibrium, String side, boolean atPressure, State state) {
        Term temperature = new Term(atPressure ? "T_" + side : "T", state.temperature(), QuantityKind.TEMPERATURE);
        Term pressure = new Term(atPressure ? "p" : "p_" + side, state.pressure(), QuantityKind.PRESSURE);
        Term given = atPressure ? pressure : temperature;
        Term found = atPressure ? temperature : pressure;
        String formula = found.symbol() + " = " + found.symbol() + '(' + given.symbol() + ')';
        return new Step(side + " point", formula, List.of(given), found, source(equilibrium));
    }

    private static String source(Equilibrium equilibrium) {
        if (equilibrium.refrigerant() instanceof Blend blend) {
            return "equation of state: " + blend.sources().get(0).text()
                    + "; those of the components and pairs stand in basis";
        }
        return equilibrium.refrigerant().sources().stream()
                .map(Citation::text)
                .collect(Collectors.joining("; ", "equation of state: ", ""));
    }
}
