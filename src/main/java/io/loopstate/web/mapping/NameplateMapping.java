package io.loopstate.web.mapping;

import io.loopstate.engine.compression.CylinderSize;
import io.loopstate.engine.compression.Nameplate;
import io.loopstate.engine.cycle.Transport;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.NameplateFigures;
import io.loopstate.web.dto.NameplateReply;
import io.loopstate.web.dto.NameplateRequest;
import java.util.Optional;
import java.util.OptionalDouble;

/** Back from a nameplate. */
public final class NameplateMapping {
    /** The calculation. */
    public static final Operation<NameplateRequest, Nameplate.Spec, Nameplate.Result, NameplateReply> OPERATION =
            new Operation<>(
                    NameplateRequest.class,
                    NameplateMapping::spec,
                    Nameplate::calculate,
                    NameplateMapping::reply,
                    Ports.INPUTS);

    private NameplateMapping() {}

    private static Nameplate.Spec spec(Input<NameplateRequest> input) {
        Ports.check(input);
        Machines.checkCircuit(input);
        input.exactlyOne("refrigeratingCapacity", "massFlow");
        if (input.given("refrigeratingCapacity")) {
            input.exactlyOne("liquid.temperature", "liquid.subcooling");
        }
        input.atMostOne("displacement", "volumetricEfficiency");
        input.atMostOne("electricalPower", "shaftPower");
        input.needs("strokeToBoreRatio", "speed", "bore and stroke follow from the volume of one revolution.");
        input.refuseFaults();
        NameplateRequest request = input.request();
        return new Nameplate.Spec(
                input.equilibrium(),
                Ports.suction(input),
                Ports.discharge(input),
                Machines.circuit(input, request.liquid(), request.evaporatorOutletTemperature()),
                Si.optional(request.refrigeratingCapacity()),
                Si.optional(request.massFlow()),
                Si.optional(request.displacement()),
                Si.optional(request.volumetricEfficiency()),
                Si.optional(request.electricalPower()),
                Si.optional(request.shaftPower()),
                Si.optional(request.motorEfficiency()),
                Si.optional(request.speed()),
                request.cylinders() == null ? 1 : request.cylinders(),
                Si.optional(request.strokeToBoreRatio()),
                Boolean.TRUE.equals(request.doubleActing()),
                input.atmosphere().pressure(),
                Guidances.of(input),
                input.explain());
    }

    private static NameplateReply reply(Input<NameplateRequest> input, Nameplate.Result result, Trust trust) {
        Output out = input.output();
        return new NameplateReply(
                States.of(out, result.suction(), Transport.none()),
                States.of(out, result.isentropicOutlet(), Transport.none()),
                figures(out, result.figures(), result.cylinders()),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.COMPRESSION_PORTS),
                trust.cautions(input));
    }

    private static NameplateFigures figures(Output out, Nameplate.Figures figures, Optional<CylinderSize> cylinders) {
        return new NameplateFigures(
                figures.pressureRatio(),
                out.of(QuantityKind.MASS_FLOW, figures.massFlow()),
                out.of(QuantityKind.VOLUME_FLOW, figures.suctionVolumeFlow()),
                out.of(QuantityKind.POWER, figures.refrigeratingCapacity()),
                out.of(QuantityKind.VOLUME_FLOW, figures.displacement()),
                out.plain(figures.volumetricEfficiency()),
                out.of(QuantityKind.VOLUME, figures.displacementPerRevolution()),
                out.of(QuantityKind.LENGTH, length(cylinders.map(CylinderSize::bore))),
                out.of(QuantityKind.LENGTH, length(cylinders.map(CylinderSize::stroke))),
                out.of(QuantityKind.POWER, figures.isentropicPower()),
                out.of(QuantityKind.POWER, figures.shaftPower()),
                out.of(QuantityKind.POWER, figures.electricalPower()),
                out.plain(figures.shaftEfficiency()),
                out.plain(figures.overallEfficiency()),
                out.plain(figures.coefficientOfPerformance()));
    }

    private static OptionalDouble length(Optional<Double> meters) {
        return meters.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
