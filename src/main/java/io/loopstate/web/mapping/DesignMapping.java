package io.loopstate.web.mapping;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SuctionLineGain;
import io.loopstate.engine.cycle.DesignCycle;
import io.loopstate.engine.cycle.Size;
import io.loopstate.web.dto.CompressorType;
import io.loopstate.web.dto.DesignReply;
import io.loopstate.web.dto.DesignRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cycle from design conditions. */
public final class DesignMapping {
    private static final String[] EVAPORATOR_OUTLET = {
        "superheat", "evaporatorOutletTemperature", "evaporatorOutletQuality"
    };
    private static final String[] CONDENSER_OUTLET = OutletConditions.CONDENSER;

    /** The calculation. */
    public static final Operation<DesignRequest, DesignCycle.Spec, DesignCycle.Result, DesignReply> OPERATION =
            new Operation<>(
                    DesignRequest.class,
                    DesignMapping::spec,
                    DesignCycle::calculate,
                    DesignMapping::reply,
                    Map.of(
                            "evaporatorOutlet", List.of(EVAPORATOR_OUTLET),
                            "condenserOutlet", List.of(CONDENSER_OUTLET)));

    private DesignMapping() {}

    private static DesignCycle.Spec spec(Input<DesignRequest> input) {
        input.exactlyOne("evaporating.temperature", "evaporating.pressure");
        input.exactlyOne("condensing.temperature", "condensing.pressure");
        input.exactlyOne(EVAPORATOR_OUTLET);
        input.exactlyOne(CONDENSER_OUTLET);
        input.atMostOne("refrigeratingCapacity", "massFlow", "displacement");
        input.atMostOne("suctionLineHeatGain", "suctionLineTemperatureRise", "compressorInletTemperature");
        input.refuseFaults();
        DesignRequest request = input.request();
        return new DesignCycle.Spec(
                input.equilibrium(),
                input.engine("evaporating", () -> OutletConditions.level(request.evaporating())),
                input.engine("condensing", () -> OutletConditions.level(request.condensing())),
                evaporatorOutlet(request),
                condenserOutlet(request),
                compressor(request),
                losses(request),
                size(request),
                input.atmosphere().pressure(),
                Guidances.of(input),
                input.explain());
    }

    private static OutletCondition evaporatorOutlet(DesignRequest request) {
        if (request.superheat() != null) {
            return OutletCondition.superheat(request.superheat().value());
        }
        return request.evaporatorOutletTemperature() == null
                ? OutletCondition.quality(request.evaporatorOutletQuality())
                : OutletCondition.temperature(
                        request.evaporatorOutletTemperature().value());
    }

    private static OutletCondition condenserOutlet(DesignRequest request) {
        return OutletConditions.condenser(
                request.subcooling(),
                request.condenserOutletTemperature(),
                request.condenserOutletQuality(),
                request.gasCoolerOutletTemperature());
    }

    private static CompressorModel compressor(DesignRequest request) {
        return new CompressorModel(
                request.compressorKind() == CompressorType.HERMETIC ? CompressorKind.HERMETIC : CompressorKind.OPEN,
                request.isentropicEfficiency(),
                Si.orZero(request.heatLossFraction()),
                Si.optional(request.volumetricEfficiency()),
                Si.optional(request.motorEfficiency()));
    }

    private static LineLosses losses(DesignRequest request) {
        return new LineLosses(
                Si.orZero(request.evaporatorPressureDrop()),
                Si.orZero(request.suctionLinePressureDrop()),
                Si.orZero(request.dischargeLinePressureDrop()),
                Si.orZero(request.condenserPressureDrop()),
                Si.orZero(request.liquidLinePressureDrop()),
                suctionLineGain(request),
                Si.orZero(request.dischargeLineHeatLoss()),
                Si.orZero(request.liquidLineHeatGain()));
    }

    private static SuctionLineGain suctionLineGain(DesignRequest request) {
        if (request.compressorInletTemperature() != null) {
            return SuctionLineGain.compressorInletTemperature(
                    request.compressorInletTemperature().value());
        }
        return request.suctionLineTemperatureRise() == null
                ? SuctionLineGain.heat(Si.orZero(request.suctionLineHeatGain()))
                : SuctionLineGain.temperatureRise(
                        request.suctionLineTemperatureRise().value());
    }

    private static Optional<Size> size(DesignRequest request) {
        if (request.refrigeratingCapacity() != null) {
            return Optional.of(
                    Size.refrigeratingCapacity(request.refrigeratingCapacity().value()));
        }
        if (request.massFlow() != null) {
            return Optional.of(Size.massFlow(request.massFlow().value()));
        }
        return Optional.ofNullable(request.displacement()).map(swept -> Size.displacement(swept.value()));
    }

    private static DesignReply reply(Input<DesignRequest> input, DesignCycle.Result result, Trust trust) {
        Output out = input.output();
        return new DesignReply(
                result.points().stream().map(point -> States.of(out, point)).toList(),
                Levels.of(out, result.evaporating()),
                result.condensing().map(level -> Levels.of(out, level)).orElse(null),
                Performances.of(out, result.performance(), result.sizing()),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.DESIGN),
                trust.cautions(input));
    }
}
