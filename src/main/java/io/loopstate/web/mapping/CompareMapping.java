package io.loopstate.web.mapping;

import io.loopstate.engine.compression.CompressorUnit;
import io.loopstate.engine.compression.MapCompressor;
import io.loopstate.engine.compression.ModelComparison;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.CompareFigures;
import io.loopstate.web.dto.CompareReply;
import io.loopstate.web.dto.CompareRequest;
import io.loopstate.web.dto.ModelFigures;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** A rating map against a displacement model. */
public final class CompareMapping {
    /** The calculation. */
    public static final Operation<CompareRequest, ModelComparison.Spec, ModelComparison.Result, CompareReply>
            OPERATION = new Operation<>(
                    CompareRequest.class,
                    CompareMapping::spec,
                    ModelComparison::calculate,
                    CompareMapping::reply,
                    inputs());

    private CompareMapping() {}

    private static Map<String, List<String>> inputs() {
        Map<String, List<String>> inputs = new HashMap<>(Machines.inputs(CompareRequest.class));
        inputs.put(RatingMapMapping.RATING, RatingMapMapping.RATING_MEMBERS);
        return inputs;
    }

    private static ModelComparison.Spec spec(Input<CompareRequest> input) {
        Ports.check(input);
        Machines.check(input, input.request().machine());
        Supplier<MapCompressor> map =
                RatingMapMapping.map(input, input.request().map());
        input.refuseFaults();
        return new ModelComparison.Spec(
                input.equilibrium(),
                Ports.suction(input),
                Ports.discharge(input),
                map.get(),
                Machines.machine(input.request().machine()),
                Guidances.of(input),
                input.explain());
    }

    private static CompareReply reply(Input<CompareRequest> input, ModelComparison.Result result, Trust trust) {
        Output out = input.output();
        ModelComparison.Figures figures = result.figures();
        return new CompareReply(
                map(out, figures),
                machine(out, figures),
                difference(out, figures),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.COMPRESSION_PORTS),
                trust.cautions(input));
    }

    static ModelFigures map(Output out, ModelComparison.Figures figures) {
        return model(out, figures.map(), figures.mapVolumetricEfficiency(), figures.mapEfficiency());
    }

    static ModelFigures machine(Output out, ModelComparison.Figures figures) {
        return model(out, figures.model(), figures.modelVolumetricEfficiency(), figures.modelEfficiency());
    }

    static CompareFigures difference(Output out, ModelComparison.Figures figures) {
        return new CompareFigures(
                figures.massFlowDifference(),
                figures.powerDifference(),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, figures.dischargeTemperatureDifference()));
    }

    private static ModelFigures model(
            Output out, CompressorUnit.Running running, double volumetricEfficiency, double efficiency) {
        return new ModelFigures(
                out.of(QuantityKind.MASS_FLOW, running.massFlow()),
                out.of(QuantityKind.POWER, running.electricalPower()),
                out.of(QuantityKind.TEMPERATURE, running.discharge().temperature()),
                out.of(QuantityKind.POWER, running.heatLoss()),
                volumetricEfficiency,
                efficiency);
    }
}
