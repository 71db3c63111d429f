package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.StateQuery;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.property.Phase;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.StateReply;
import io.loopstate.web.dto.StateRequest;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One state from two variables. */
public final class StateMapping {
    /** The calculation. */
    public static final Operation<StateRequest, StateQuery.Spec, StateQuery.Result, StateReply> OPERATION =
            new Operation<>(
                    StateRequest.class, StateMapping::spec, StateQuery::calculate, StateMapping::reply, Map.of());

    private static final String[] VARIABLES = {
        "temperature",
        "pressure",
        "density",
        "specificVolume",
        "specificEnthalpy",
        "specificEntropy",
        "specificInternalEnergy",
        "vaporQuality",
        "superheat",
        "subcooling"
    };

    private StateMapping() {}

    private static StateQuery.Spec spec(Input<StateRequest> input) {
        input.exactly(2, VARIABLES);
        input.refuseFaults();
        StateRequest request = input.request();
        List<Map.Entry<Variable, Double>> given =
                given(request).entrySet().stream().toList();
        return new StateQuery.Spec(
                input.equilibrium(),
                given.get(0).getKey(),
                given.get(0).getValue(),
                given.get(1).getKey(),
                given.get(1).getValue(),
                Optional.ofNullable(request.phase()).map(phase -> Phase.valueOf(phase.name())),
                Guidance.common());
    }

    private static Map<Variable, Double> given(StateRequest request) {
        Map<Variable, Double> given = new EnumMap<>(Variable.class);
        put(given, Variable.TEMPERATURE, request.temperature());
        put(given, Variable.PRESSURE, request.pressure());
        put(given, Variable.DENSITY, request.density());
        put(given, Variable.SPECIFIC_VOLUME, request.specificVolume());
        put(given, Variable.SPECIFIC_ENTHALPY, request.specificEnthalpy());
        put(given, Variable.SPECIFIC_ENTROPY, request.specificEntropy());
        put(given, Variable.SPECIFIC_INTERNAL_ENERGY, request.specificInternalEnergy());
        if (request.vaporQuality() != null) {
            given.put(Variable.VAPOR_QUALITY, request.vaporQuality());
        }
        put(given, Variable.SUPERHEAT, request.superheat());
        put(given, Variable.SUBCOOLING, request.subcooling());
        return given;
    }

    private static void put(Map<Variable, Double> given, Variable variable, Quantity quantity) {
        if (quantity != null) {
            given.put(variable, quantity.value());
        }
    }

    private static StateReply reply(Input<StateRequest> input, StateQuery.Result result, Trust trust) {
        return new StateReply(
                States.of(input.output(), null, result.state(), result.superheat(), result.subcooling()),
                trust.working(input, List.of()),
                trust.basis(input),
                trust.warnings(input, result.findings()),
                trust.cautions(input));
    }
}
