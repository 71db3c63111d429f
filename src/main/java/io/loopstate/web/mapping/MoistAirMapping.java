package io.loopstate.web.mapping;

import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.rejection.MoistAirQuery;
import io.loopstate.web.dto.AirEnthalpyDatum;
import io.loopstate.web.dto.MoistAirReply;
import io.loopstate.web.dto.MoistAirRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Moist air from two of its variables. */
public final class MoistAirMapping {
    private static final String[] VARIABLES =
            Arrays.stream(AirVariable.values()).map(AirVariable::input).toArray(String[]::new);

    /** The calculation. */
    public static final Operation<MoistAirRequest, MoistAirQuery.Spec, MoistAirQuery.Result, MoistAirReply> OPERATION =
            new Operation<>(
                    MoistAirRequest.class,
                    MoistAirMapping::spec,
                    MoistAirQuery::calculate,
                    MoistAirMapping::reply,
                    Map.of());

    private MoistAirMapping() {}

    private static MoistAirQuery.Spec spec(Input<MoistAirRequest> input) {
        input.exactly(2, VARIABLES);
        input.refuseFaults();
        List<MoistAirQuery.Known> known = Arrays.stream(AirVariable.values())
                .filter(variable -> input.given(variable.input()))
                .map(variable -> new MoistAirQuery.Known(
                        variable, input.si(variable.input()).orElseThrow()))
                .toList();
        return new MoistAirQuery.Spec(
                input.atmosphere().pressure(), known.get(0), known.get(1), datum(input), input.explain());
    }

    private static EnthalpyDatum datum(Input<MoistAirRequest> input) {
        AirEnthalpyDatum datum = input.request().enthalpyDatum();
        return datum == null ? EnthalpyDatum.ZERO_CELSIUS : EnthalpyDatum.valueOf(datum.name());
    }

    private static MoistAirReply reply(Input<MoistAirRequest> input, MoistAirQuery.Result result, Trust trust) {
        Output out = input.output();
        EnthalpyDatum datum = datum(input);
        return new MoistAirReply(
                AirStates.of(out, result.air(), datum),
                AirStates.of(out, result.factors()),
                trust.working(input, result.steps()),
                trust.airBasis(input, datum),
                trust.warnings(input, result.findings()),
                trust.airCautions());
    }
}
