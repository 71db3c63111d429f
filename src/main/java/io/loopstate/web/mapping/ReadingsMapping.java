package io.loopstate.web.mapping;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.cycle.AirStream;
import io.loopstate.engine.cycle.Electricity;
import io.loopstate.engine.cycle.FieldReadings;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.AirRequest;
import io.loopstate.web.dto.CompressorType;
import io.loopstate.web.dto.ElectricityRequest;
import io.loopstate.web.dto.ReadingsReply;
import io.loopstate.web.dto.ReadingsRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What readings on a running unit determine. */
public final class ReadingsMapping {
    /** The calculation. */
    public static final Operation<ReadingsRequest, FieldReadings.Spec, FieldReadings.Result, ReadingsReply> OPERATION =
            new Operation<>(
                    ReadingsRequest.class,
                    ReadingsMapping::spec,
                    FieldReadings::calculate,
                    ReadingsMapping::reply,
                    Map.of("liquidLineLoss", List.of("liquidLinePressureDrop")));

    private ReadingsMapping() {}

    private static FieldReadings.Spec spec(Input<ReadingsRequest> input) {
        checkAir(input, "condenserAir");
        checkAir(input, "evaporatorAir");
        checkElectricity(input);
        input.refuseFaults();
        ReadingsRequest request = input.request();
        return new FieldReadings.Spec(
                input.equilibrium(),
                new FieldReadings.Pressures(
                        request.suctionPressure().value(),
                        request.dischargePressure().value(),
                        Si.optional(request.liquidLinePressure()),
                        input.atmosphere().pressure()),
                new FieldReadings.LineTemperatures(
                        request.suctionLineTemperature().value(),
                        Si.optional(request.dischargeLineTemperature()),
                        Si.optional(request.liquidLineTemperature()),
                        Si.optional(request.evaporatorOutletTemperature())),
                new FieldReadings.Air(
                        Si.optional(request.outdoorAirTemperature()),
                        air(request.condenserAir()),
                        air(request.evaporatorAir())),
                machine(request),
                Guidances.of(input),
                input.explain());
    }

    private static void checkAir(Input<ReadingsRequest> input, String coil) {
        input.atMostOne(coil + ".volumeFlow", coil + ".massFlow");
        input.needs(coil + ".volumeFlow", coil + ".enteringTemperature", "it sets the density of the air.");
    }

    private static void checkElectricity(Input<ReadingsRequest> input) {
        List<String> others = List.of("electricity.voltage", "electricity.current", "electricity.powerFactor");
        for (String other : others) {
            input.atMostOne("electricity.power", other);
            if (!input.given("electricity.power")) {
                others.forEach(needed -> input.needs(other, needed, "without the power all three are needed."));
            }
        }
    }

    private static AirStream air(AirRequest air) {
        return air == null
                ? AirStream.none()
                : new AirStream(
                        Si.optional(air.enteringTemperature()),
                        Si.optional(air.leavingTemperature()),
                        Si.optional(air.volumeFlow()),
                        Si.optional(air.massFlow()),
                        Si.optional(air.totalHeat()));
    }

    private static FieldReadings.Machine machine(ReadingsRequest request) {
        return new FieldReadings.Machine(
                request.compressorKind() == CompressorType.OPEN ? CompressorKind.OPEN : CompressorKind.HERMETIC,
                Optional.ofNullable(request.electricity()).map(ReadingsMapping::electricity),
                Si.optional(request.displacement()),
                Si.optional(request.volumetricEfficiency()),
                Si.optional(request.motorEfficiency()),
                Si.orZero(request.heatLossFraction()),
                Si.orZero(request.liquidLift()),
                Si.orZero(request.liquidLinePressureDrop()));
    }

    private static Electricity electricity(ElectricityRequest electricity) {
        return new Electricity(
                Si.optional(electricity.power()),
                Si.optional(electricity.voltage()),
                Si.optional(electricity.current()),
                electricity.phases() == null ? 1 : electricity.phases(),
                Si.optional(electricity.powerFactor()));
    }

    private static ReadingsReply reply(Input<ReadingsRequest> input, FieldReadings.Result result, Trust trust) {
        Output out = input.output();
        return new ReadingsReply(
                result.points().stream().map(point -> States.of(out, point)).toList(),
                Levels.of(out, result.evaporating()),
                result.condensing().map(level -> Levels.of(out, level)).orElse(null),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.superheat()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.evaporatorSuperheat()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.subcooling()),
                result.liquidLinePressureAssumed(),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.flashMargin()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.condensingOverAmbient()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.evaporatorTemperatureDifference()),
                result.pressureRatio(),
                result.compression()
                        .map(compression -> Measurements.of(out, compression))
                        .orElse(null),
                Measurements.of(out, result.perMass()),
                result.routes().stream()
                        .map(route -> Measurements.of(out, route))
                        .toList(),
                result.balances().stream()
                        .map(balance -> Measurements.of(out, balance))
                        .toList(),
                out.of(QuantityKind.DENSITY, result.condenserAirDensity()),
                out.of(QuantityKind.DENSITY, result.evaporatorAirDensity()),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.READINGS),
                trust.cautions(input));
    }
}
