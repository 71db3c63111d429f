package io.loopstate.web.mapping;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.HeatRejection;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.rejection.CondenserDuty;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.CompressorType;
import io.loopstate.web.dto.DutyHeat;
import io.loopstate.web.dto.DutyReply;
import io.loopstate.web.dto.DutyRequest;
import io.loopstate.web.dto.FluidState;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.RejectedHeat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The heat that a condenser has to give off. */
public final class DutyMapping {
    /** The calculation. */
    public static final Operation<DutyRequest, CondenserDuty.Spec, CondenserDuty.Result, DutyReply> OPERATION =
            new Operation<>(
                    DutyRequest.class,
                    DutyMapping::spec,
                    CondenserDuty::calculate,
                    DutyMapping::reply,
                    Map.of(
                            "condenserOutlet", List.of(OutletConditions.CONDENSER),
                            "suction", List.of("superheat")));

    private DutyMapping() {}

    private static CondenserDuty.Spec spec(Input<DutyRequest> input) {
        boolean states = input.given("condensing.temperature") || input.given("condensing.pressure");
        if (states) {
            checkStates(input);
        } else {
            checkBalance(input);
        }
        input.refuseFaults();
        DutyRequest request = input.request();
        return new CondenserDuty.Spec(
                input.equilibrium(),
                states ? Optional.of(condensingSide(input)) : Optional.empty(),
                new CondenserDuty.Machine(
                        kind(request),
                        Si.optional(request.massFlow()),
                        Si.optional(request.refrigeratingCapacity()),
                        Si.optional(request.compressorPower()),
                        Si.optional(request.motorEfficiency()),
                        Si.orZero(request.shellHeatLoss()),
                        Si.orZero(request.oilCoolerHeat())),
                Guidances.of(input),
                input.explain());
    }

    private static void checkStates(Input<DutyRequest> input) {
        input.exactlyOne("condensing.temperature", "condensing.pressure");
        input.exactlyOne(OutletConditions.CONDENSER);
        boolean evaporating = input.given("evaporating.temperature") || input.given("evaporating.pressure");
        if (evaporating) {
            input.exactlyOne("evaporating.temperature", "evaporating.pressure");
            input.exactlyOne("superheat");
            input.exactlyOne("isentropicEfficiency");
            input.atMostOne("condenserInletTemperature", "evaporating.temperature", "evaporating.pressure");
        } else {
            input.exactlyOne("condenserInletTemperature", "evaporating.temperature", "evaporating.pressure");
            refuseLoose(input);
        }
    }

    private static void checkBalance(Input<DutyRequest> input) {
        if (!input.given("refrigeratingCapacity") && !input.given("compressorPower")) {
            input.exactlyOne("condensing.temperature", "condensing.pressure");
            return;
        }
        input.needs("refrigeratingCapacity", "compressorPower", "without states the heat follows from both.");
        input.needs("compressorPower", "refrigeratingCapacity", "without states the heat follows from both.");
        Stream.concat(
                        Stream.of("condenserInletTemperature", "evaporating.temperature", "evaporating.pressure"),
                        Stream.of(OutletConditions.CONDENSER))
                .forEach(path ->
                        input.needs(path, "condensing.temperature", "a state in the condenser needs its level."));
        refuseLoose(input);
    }

    /** What belongs to a compression has no use without its evaporating level. */
    private static void refuseLoose(Input<DutyRequest> input) {
        for (String path : List.of("superheat", "isentropicEfficiency")) {
            input.needs(path, "evaporating.temperature", "the compression starts from there.");
        }
    }

    private static CompressorKind kind(DutyRequest request) {
        return request.compressorKind() == CompressorType.OPEN ? CompressorKind.OPEN : CompressorKind.HERMETIC;
    }

    private static CondenserDuty.CondensingSide condensingSide(Input<DutyRequest> input) {
        DutyRequest request = input.request();
        return new CondenserDuty.CondensingSide(
                input.engine("condensing", () -> OutletConditions.level(request.condensing())),
                Si.optional(request.condenserInletTemperature()),
                request.evaporating() == null
                        ? Optional.empty()
                        : Optional.of(new CondenserDuty.Compression(
                                input.engine("evaporating", () -> OutletConditions.level(request.evaporating())),
                                OutletCondition.superheat(request.superheat().value()),
                                new CompressorModel(
                                        kind(request),
                                        request.isentropicEfficiency(),
                                        0,
                                        OptionalDouble.empty(),
                                        Si.optional(request.motorEfficiency())))),
                OutletConditions.condenser(
                        request.subcooling(),
                        request.condenserOutletTemperature(),
                        request.condenserOutletQuality(),
                        request.gasCoolerOutletTemperature()));
    }

    private static DutyReply reply(Input<DutyRequest> input, CondenserDuty.Result result, Trust trust) {
        Output out = input.output();
        Optional<CondenserDuty.PerMass> perMass = result.perMass();
        return new DutyReply(
                points(out, result),
                result.condensing().map(level -> Levels.of(out, level)).orElse(null),
                energy(out, perMass.map(CondenserDuty.PerMass::heatRejection).map(OptionalDouble::of)),
                result.parts().map(parts -> parts(out, parts)).orElse(null),
                energy(out, perMass.map(CondenserDuty.PerMass::refrigeratingEffect)),
                energy(out, perMass.map(CondenserDuty.PerMass::compressorWork)),
                heat(out, result.totals()),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.DUTY),
                trust.cautions(input));
    }

    private static List<FluidState> points(Output out, CondenserDuty.Result result) {
        List<Point> points = Stream.of(result.inlet(), result.outlet())
                .flatMap(Optional::stream)
                .toList();
        return points.isEmpty()
                ? null
                : points.stream().map(point -> States.of(out, point)).toList();
    }

    private static Quantity energy(Output out, Optional<OptionalDouble> value) {
        return out.of(QuantityKind.SPECIFIC_ENERGY, value.orElse(OptionalDouble.empty()));
    }

    private static RejectedHeat parts(Output out, HeatRejection parts) {
        return new RejectedHeat(
                out.of(QuantityKind.SPECIFIC_ENERGY, parts.desuperheating()),
                out.of(QuantityKind.SPECIFIC_ENERGY, parts.condensing()),
                out.of(QuantityKind.SPECIFIC_ENERGY, parts.subcooling()),
                out.of(QuantityKind.SPECIFIC_ENERGY, parts.gasCooling()));
    }

    private static DutyHeat heat(Output out, CondenserDuty.Totals totals) {
        return new DutyHeat(
                out.of(QuantityKind.MASS_FLOW, totals.massFlow()),
                out.of(QuantityKind.POWER, totals.refrigeratingCapacity()),
                out.of(QuantityKind.POWER, totals.refrigerantPower()),
                out.of(QuantityKind.POWER, totals.heatRejected()),
                part(out, totals, HeatRejection::desuperheating),
                part(out, totals, HeatRejection::condensing),
                part(out, totals, HeatRejection::subcooling),
                part(out, totals, HeatRejection::gasCooling),
                out.of(QuantityKind.POWER, totals.oilCoolerHeat()),
                out.of(QuantityKind.POWER, totals.shellHeatLoss()),
                out.plain(totals.heatRejectionFactor()),
                out.plain(totals.machineFactor()),
                out.of(QuantityKind.POWER, totals.balanceHeat()),
                out.plain(totals.balanceDifference()));
    }

    private static Quantity part(Output out, CondenserDuty.Totals totals, ToDoubleFunction<HeatRejection> part) {
        return totals.parts()
                .map(parts -> out.of(QuantityKind.POWER, part.applyAsDouble(parts)))
                .orElse(null);
    }
}
