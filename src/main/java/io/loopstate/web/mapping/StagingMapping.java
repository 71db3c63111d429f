package io.loopstate.web.mapping;

import io.loopstate.engine.compression.Staging;
import io.loopstate.engine.cycle.Optionals;
import io.loopstate.engine.cycle.Transport;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.IntermediateFigures;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.StageFigures;
import io.loopstate.web.dto.StagingFigures;
import io.loopstate.web.dto.StagingReply;
import io.loopstate.web.dto.StagingRequest;
import java.util.OptionalDouble;

/** Two stages with cooling between. */
public final class StagingMapping {
    /** The calculation. */
    public static final Operation<StagingRequest, Staging.Spec, Staging.Result, StagingReply> OPERATION =
            new Operation<>(
                    StagingRequest.class,
                    StagingMapping::spec,
                    Staging::calculate,
                    StagingMapping::reply,
                    Ports.INPUTS);

    private StagingMapping() {}

    private static Staging.Spec spec(Input<StagingRequest> input) {
        Ports.check(input);
        input.exactlyOne("isentropicEfficiency", "polytropicIndex");
        input.needs("highStageIsentropicEfficiency", "isentropicEfficiency", "the first stage needs one too.");
        input.refuseFaults();
        StagingRequest request = input.request();
        boolean index = request.polytropicIndex() != null;
        double low = index ? request.polytropicIndex() : request.isentropicEfficiency();
        return new Staging.Spec(
                input.equilibrium(),
                Ports.suction(input),
                Ports.discharge(input),
                index ? Staging.Kind.INDEX : Staging.Kind.EFFICIENCY,
                low,
                request.highStageIsentropicEfficiency() == null ? low : request.highStageIsentropicEfficiency(),
                request.intercoolerTemperature().value(),
                Si.optional(request.intermediatePressure()),
                input.atmosphere().pressure(),
                Guidances.of(input),
                input.explain());
    }

    private static StagingReply reply(Input<StagingRequest> input, Staging.Result result, Trust trust) {
        Output out = input.output();
        OptionalDouble flow = Si.optional(input.request().massFlow());
        Staging.Stages stages = result.stages();
        double single = result.single().work();
        return new StagingReply(
                new StagingFigures(
                        out.of(QuantityKind.PRESSURE, stages.intermediatePressure()),
                        out.of(QuantityKind.SPECIFIC_ENERGY, stages.work()),
                        out.of(QuantityKind.SPECIFIC_ENERGY, stages.intercoolerHeat()),
                        out.of(QuantityKind.SPECIFIC_ENERGY, result.workSaved()),
                        result.savedShare(),
                        power(out, flow, stages.work()),
                        power(out, flow, stages.intercoolerHeat()),
                        power(out, flow, result.workSaved())),
                stage(out, flow, stages.low()),
                stage(out, flow, stages.high()),
                stage(out, flow, result.single()),
                intermediate(out, result.optimum(), single),
                intermediate(out, result.squareRoot(), single),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.COMPRESSION_PORTS),
                trust.cautions(input));
    }

    private static Quantity power(Output out, OptionalDouble flow, double perMass) {
        return out.of(QuantityKind.POWER, Optionals.map(flow, kilograms -> kilograms * perMass));
    }

    private static StageFigures stage(Output out, OptionalDouble flow, Staging.Stage stage) {
        return new StageFigures(
                States.of(out, stage.inlet(), Transport.none()),
                States.of(out, stage.outlet(), Transport.none()),
                stage.outlet().pressure() / stage.inlet().pressure(),
                out.of(QuantityKind.SPECIFIC_ENERGY, stage.work()),
                out.of(QuantityKind.SPECIFIC_ENERGY, stage.heat()),
                power(out, flow, stage.work()));
    }

    private static IntermediateFigures intermediate(Output out, Staging.Stages stages, double single) {
        return new IntermediateFigures(
                out.of(QuantityKind.PRESSURE, stages.intermediatePressure()),
                out.of(QuantityKind.SPECIFIC_ENERGY, stages.work()),
                1 - stages.work() / single);
    }
}
