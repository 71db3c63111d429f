package io.loopstate.web.mapping;

import io.loopstate.engine.compression.CompressionProcess;
import io.loopstate.engine.compression.ProcessMeasure;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.CompressionFigures;
import io.loopstate.web.dto.CompressionFlow;
import io.loopstate.web.dto.IdealGasFigures;
import io.loopstate.web.dto.IsothermalFigures;
import io.loopstate.web.dto.LiquidFigures;
import io.loopstate.web.dto.ProcessReply;
import io.loopstate.web.dto.ProcessRequest;
import io.loopstate.web.dto.Quantity;

/** One compression. */
public final class ProcessMapping {
    private static final String[] MEASURES = {
        "isentropicEfficiency", "polytropicEfficiency", "polytropicIndex", "discharge.temperature"
    };
    private static final ProcessMeasure.Kind[] KINDS = {
        ProcessMeasure.Kind.ISENTROPIC_EFFICIENCY,
        ProcessMeasure.Kind.POLYTROPIC_EFFICIENCY,
        ProcessMeasure.Kind.POLYTROPIC_INDEX,
        ProcessMeasure.Kind.DISCHARGE_TEMPERATURE
    };
    static final String IDEAL_GAS = "for class: p v = R T with constant heat capacities";

    /** The calculation. */
    public static final Operation<ProcessRequest, CompressionProcess.Spec, CompressionProcess.Result, ProcessReply>
            OPERATION = new Operation<>(
                    ProcessRequest.class,
                    ProcessMapping::spec,
                    CompressionProcess::calculate,
                    ProcessMapping::reply,
                    Ports.INPUTS);

    private ProcessMapping() {}

    private static CompressionProcess.Spec spec(Input<ProcessRequest> input) {
        Ports.check(input);
        input.exactlyOne(MEASURES);
        input.atMostOne("massFlow", "suctionVolumeFlow");
        input.atMostOne("polytropicIndex", "heatLossFraction");
        input.refuseFaults();
        ProcessRequest request = input.request();
        return new CompressionProcess.Spec(
                input.equilibrium(),
                Ports.suction(input),
                Ports.discharge(input),
                measure(input),
                Si.orZero(request.heatLossFraction()),
                Si.optional(request.massFlow()),
                Si.optional(request.suctionVolumeFlow()),
                input.atmosphere().pressure(),
                Guidances.of(input),
                input.explain());
    }

    private static ProcessMeasure measure(Input<ProcessRequest> input) {
        int given = 0;
        while (!input.given(MEASURES[given])) {
            given++;
        }
        return new ProcessMeasure(KINDS[given], input.si(MEASURES[given]).orElseThrow());
    }

    private static ProcessReply reply(Input<ProcessRequest> input, CompressionProcess.Result result, Trust trust) {
        Output out = input.output();
        return new ProcessReply(
                result.points().stream().map(point -> States.of(out, point)).toList(),
                figures(out, result.figures()),
                result.isothermal().map(figures -> isothermal(out, figures)).orElse(null),
                result.idealGas().map(gas -> idealGas(out, gas)).orElse(null),
                result.liquid().map(liquid -> liquid(out, liquid)).orElse(null),
                result.flow().map(flow -> flow(out, flow)).orElse(null),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.COMPRESSION),
                trust.cautions(input));
    }

    private static CompressionFigures figures(Output out, CompressionProcess.Figures figures) {
        return new CompressionFigures(
                figures.pressureRatio(),
                figures.volumeRatio(),
                energy(out, figures.isentropicWork()),
                out.of(QuantityKind.SPECIFIC_ENERGY, figures.polytropicWork()),
                energy(out, figures.work()),
                energy(out, figures.heatLoss()),
                figures.isentropicEfficiency(),
                out.plain(figures.polytropicEfficiency()),
                figures.isentropicIndex(),
                figures.polytropicIndex(),
                out.of(QuantityKind.TEMPERATURE, figures.dischargeTemperature()),
                out.of(QuantityKind.TEMPERATURE, figures.isentropicDischargeTemperature()));
    }

    private static IsothermalFigures isothermal(Output out, CompressionProcess.Isothermal isothermal) {
        return new IsothermalFigures(
                energy(out, isothermal.work()),
                energy(out, isothermal.heat()),
                isothermal.efficiency(),
                isothermal.condenses());
    }

    private static IdealGasFigures idealGas(Output out, CompressionProcess.IdealGas gas) {
        return new IdealGasFigures(
                IDEAL_GAS,
                out.of(QuantityKind.SPECIFIC_ENTROPY, gas.gasConstant()),
                gas.heatCapacityRatio(),
                gas.index(),
                out.of(QuantityKind.TEMPERATURE, gas.dischargeTemperature()),
                energy(out, gas.work()),
                energy(out, gas.isentropicWork()),
                energy(out, gas.isothermalWork()));
    }

    static LiquidFigures liquid(Output out, CompressionProcess.Liquid liquid) {
        return new LiquidFigures(liquid.massShare(), liquid.volumeShare(), out.plain(liquid.outletQuality()));
    }

    private static CompressionFlow flow(Output out, CompressionProcess.Flow flow) {
        return new CompressionFlow(
                out.of(QuantityKind.MASS_FLOW, flow.massFlow()),
                out.of(QuantityKind.VOLUME_FLOW, flow.suctionVolumeFlow()),
                out.of(QuantityKind.VOLUME_FLOW, flow.dischargeVolumeFlow()),
                out.of(QuantityKind.POWER, flow.power()),
                out.of(QuantityKind.POWER, flow.heatLoss()));
    }

    private static Quantity energy(Output out, double value) {
        return out.of(QuantityKind.SPECIFIC_ENERGY, value);
    }
}
