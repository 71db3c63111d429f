package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.StateQuery;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.property.Phase;
import io.loopstate.web.dto.StateReply;
import io.loopstate.web.dto.StateRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One state from two variables. */
public final class StateMapping {
    /** The calculation. */
    public static final Operation<StateRequest, StateQuery.Spec, StateQuery.Result, StateReply> OPERATION =
            new Operation<>(
                    StateRequest.class, StateMapping::spec, StateQuery::calculate, StateMapping::reply, Map.of());

    private static final List<Variable> VARIABLES = List.of(Variable.values());

    private StateMapping() {}

    private static StateQuery.Spec spec(Input<StateRequest> input) {
        input.exactly(2, VARIABLES.stream().map(EngineKinds::name).toArray(String[]::new));
        input.refuseFaults();
        List<Variable> given = given(input);
        return new StateQuery.Spec(
                input.equilibrium(),
                given.get(0),
                si(input, given.get(0)),
                given.get(1),
                si(input, given.get(1)),
                Optional.ofNullable(input.request().phase()).map(phase -> Phase.valueOf(phase.name())),
                input.transportShown(StateReply.class),
                Guidance.common());
    }

    private static List<Variable> given(Input<StateRequest> input) {
        return VARIABLES.stream()
                .filter(variable -> input.given(EngineKinds.name(variable)))
                .toList();
    }

    private static double si(Input<StateRequest> input, Variable variable) {
        return input.si(EngineKinds.name(variable)).orElseThrow();
    }

    private static StateReply reply(Input<StateRequest> input, StateQuery.Result result, Trust trust) {
        return new StateReply(
                States.of(input.output(), result.state(), result.superheat(), result.subcooling(), result.transport()),
                trust.working(input, () -> PropertySteps.state(input.equilibrium(), given(input), result)),
                trust.basisWithTransport(input),
                trust.warnings(input, result.findings()),
                trust.cautions(input));
    }
}
