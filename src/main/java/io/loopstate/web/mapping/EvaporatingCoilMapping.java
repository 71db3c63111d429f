package io.loopstate.web.mapping;

import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.rejection.AirCooledEvaporator;
import io.loopstate.engine.rejection.EvaporatorCoil;
import io.loopstate.engine.rejection.EvaporatorConductance;
import io.loopstate.engine.rejection.EvaporatorFeed;
import io.loopstate.engine.rejection.EvaporatorZone;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.EvaporatingCoilReply;
import io.loopstate.web.dto.EvaporatingCoilRequest;
import io.loopstate.web.dto.EvaporatingCoilSurface;
import io.loopstate.web.dto.EvaporatingCoilZoneFigures;
import io.loopstate.web.dto.EvaporatingCoilZoneName;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** An air-cooled evaporating coil. */
public final class EvaporatingCoilMapping {
    private static final String[] OUTLET = {"superheat", "evaporatorOutletTemperature", "evaporatorOutletQuality"};

    /** The calculation. */
    public static final Operation<
                    EvaporatingCoilRequest, AirCooledEvaporator.Spec, AirCooledEvaporator.Result, EvaporatingCoilReply>
            OPERATION = new Operation<>(
                    EvaporatingCoilRequest.class,
                    EvaporatingCoilMapping::spec,
                    AirCooledEvaporator::calculate,
                    EvaporatingCoilMapping::reply,
                    Map.of("evaporatorOutlet", List.of(OUTLET)));

    private EvaporatingCoilMapping() {}

    private static AirCooledEvaporator.Spec spec(Input<EvaporatingCoilRequest> input) {
        check(input);
        input.refuseFaults();
        EvaporatingCoilRequest request = input.request();
        return new AirCooledEvaporator.Spec(
                input.equilibrium(),
                input.atmosphere().pressure(),
                AirSideMapping.air(input, "entering"),
                AirSideMapping.airflow(request.airflow()),
                new EvaporatorFeed(
                        request.inletQuality() == null
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(request.inletQuality()),
                        Si.optional(request.liquidTemperature()),
                        Si.optional(request.liquidPressure())),
                input.engine("evaporatorOutlet", () -> outlet(request)),
                Coils.load(request.massFlow(), request.heat()),
                Optional.of(AirSideMapping.air(input, "leaving"))
                        .filter(air -> air.dryBulb().isPresent()),
                Optional.ofNullable(request.evaporating())
                        .map(level -> input.engine("evaporating", () -> OutletConditions.level(level))),
                conductance(request),
                Coils.fan(request.fan()),
                Coils.dirt(request.dirt()),
                Si.optional(request.dirt().cleanConductance()),
                Guidances.of(input),
                input.explain());
    }

    private static void check(Input<EvaporatingCoilRequest> input) {
        Coils.checkAir(input);
        input.exactlyOne("liquidTemperature", "inletQuality");
        input.needs("liquidPressure", "liquidTemperature", "both together tell the liquid.");
        input.exactlyOne(OUTLET);
        boolean measured = input.given("evaporating.temperature") || input.given("evaporating.pressure");
        if (measured) {
            input.exactlyOne("evaporating.temperature", "evaporating.pressure", "conductance");
            input.exactlyOne("massFlow", "heat", "leaving.dryBulb");
            AirSideMapping.oneHumidity(input, "leaving");
            input.needs("superheatingConductance", "conductance", "it belongs to a coil that is known.");
            Coils.checkMeasured(input, "conductance");
        } else {
            input.exactlyOne("conductance", "evaporating.temperature", "evaporating.pressure");
            input.exactlyOne("massFlow", "heat");
            for (String path : List.of("leaving.dryBulb", "cleanConductance")) {
                input.needs(path, "evaporating.temperature", "it is a reading beside a measured level.");
            }
        }
        for (String humidity : List.of("wetBulb", "relativeHumidity", "dewPoint", "humidityRatio")) {
            input.needs("leaving." + humidity, "leaving.dryBulb", "both together tell the leaving air.");
        }
    }

    private static OutletCondition outlet(EvaporatingCoilRequest request) {
        if (request.superheat() != null) {
            return OutletCondition.superheat(request.superheat().value());
        }
        return request.evaporatorOutletQuality() == null
                ? OutletCondition.temperature(
                        request.evaporatorOutletTemperature().value())
                : OutletCondition.quality(request.evaporatorOutletQuality());
    }

    private static Optional<EvaporatorConductance> conductance(EvaporatingCoilRequest request) {
        return Optional.ofNullable(request.conductance())
                .map(boiling -> new EvaporatorConductance(
                        boiling.value(),
                        Si.optional(request.superheatingConductance()).orElse(boiling.value())));
    }

    private static EvaporatingCoilReply reply(
            Input<EvaporatingCoilRequest> input, AirCooledEvaporator.Result result, Trust trust) {
        Output out = input.output();
        double entering = result.air().state().dryBulb();
        double left = result.areaLeftOver();
        return new EvaporatingCoilReply(
                List.of(States.of(out, result.inlet()), States.of(out, result.outlet())),
                Levels.of(out, result.evaporating()),
                out.of(QuantityKind.MASS_FLOW, result.operating().massFlow()),
                out.of(QuantityKind.POWER, result.operating().heat()),
                out.of(QuantityKind.POWER, result.behind().sensibleHeat()),
                out.of(QuantityKind.POWER, result.behind().latentHeat()),
                result.sensibleHeatRatio(),
                out.of(QuantityKind.MASS_FLOW, result.behind().condensate()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.superheat()),
                result.operating().zones().stream()
                        .map(zone -> zone(out, zone, entering))
                        .toList(),
                surface(out, result.operating()),
                left,
                out.of(QuantityKind.THERMAL_CONDUCTANCE, result.conductance().boiling()),
                AirStates.of(out, result.entering(), EnthalpyDatum.ZERO_CELSIUS),
                AirStates.of(out, result.leaving(), EnthalpyDatum.ZERO_CELSIUS),
                out.of(QuantityKind.MASS_FLOW, result.air().massFlow()),
                out.of(
                        QuantityKind.VOLUME_FLOW,
                        result.air().massFlow() * result.air().state().specificVolume()),
                out.of(QuantityKind.VOLUME_FLOW, result.airflowPerTon()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.temperatureDifference()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.pinch().pinch(entering)),
                EvaporatingCoilZoneName.valueOf(result.pinch().kind().name()),
                out.plain(result.cleanliness().ratio()),
                out.of(QuantityKind.FOULING_RESISTANCE, result.cleanliness().foulingResistance()),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.EVAPORATING_COIL),
                trust.cautions(input));
    }

    private static EvaporatingCoilZoneFigures zone(Output out, EvaporatorZone zone, double entering) {
        return new EvaporatingCoilZoneFigures(
                EvaporatingCoilZoneName.valueOf(zone.kind().name()),
                out.of(QuantityKind.POWER, zone.heat()),
                zone.share(),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, zone.conductance()),
                out.of(QuantityKind.TEMPERATURE, zone.refrigerantInlet()),
                out.of(QuantityKind.TEMPERATURE, zone.refrigerantOutlet()),
                zone.effectiveness(),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, zone.pinch(entering)));
    }

    private static EvaporatingCoilSurface surface(Output out, EvaporatorCoil.Operating operating) {
        return new EvaporatingCoilSurface(
                out.of(QuantityKind.TEMPERATURE, operating.surface().temperature()),
                operating.surface().wet(),
                1 - operating.zones().get(0).effectiveness(),
                operating.surface().gain());
    }
}
