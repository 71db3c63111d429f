package io.loopstate.web.mapping;

import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.rejection.AirCooledCondenser;
import io.loopstate.engine.rejection.Arrangement;
import io.loopstate.engine.rejection.CoilInlet;
import io.loopstate.engine.rejection.CoilZone;
import io.loopstate.engine.rejection.Conductance;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.CoilReply;
import io.loopstate.web.dto.CoilRequest;
import io.loopstate.web.dto.CoilZoneFigures;
import io.loopstate.web.dto.CoilZoneName;
import io.loopstate.web.dto.ZoneConductances;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** An air-cooled condensing coil. */
public final class CoilMapping {
    private static final String[] OUTLET = {"subcooling", "condenserOutletTemperature", "condenserOutletQuality"};
    private static final String[] ZONES = {
        "zoneConductances.desuperheating", "zoneConductances.condensing", "zoneConductances.subcooling"
    };

    /** The calculation. */
    public static final Operation<CoilRequest, AirCooledCondenser.Spec, AirCooledCondenser.Result, CoilReply>
            OPERATION = new Operation<>(
                    CoilRequest.class,
                    CoilMapping::spec,
                    AirCooledCondenser::calculate,
                    CoilMapping::reply,
                    Map.of(
                            "condenserOutlet", List.of(OUTLET),
                            "conductance", List.of("conductance", "zoneConductances.condensing")));

    private CoilMapping() {}

    private static AirCooledCondenser.Spec spec(Input<CoilRequest> input) {
        check(input);
        input.refuseFaults();
        CoilRequest request = input.request();
        return new AirCooledCondenser.Spec(
                input.equilibrium(),
                input.atmosphere().pressure(),
                AirSideMapping.air(input, "entering"),
                AirSideMapping.airflow(request.airflow()),
                request.arrangement() == null
                        ? Arrangement.CROSS_FLOW
                        : Arrangement.valueOf(request.arrangement().name()),
                request.inletSuperheat() == null
                        ? CoilInlet.temperature(
                                request.condenserInletTemperature().value())
                        : inletSuperheat(input),
                input.engine(
                        "condenserOutlet",
                        () -> OutletConditions.condenser(
                                request.subcooling(),
                                request.condenserOutletTemperature(),
                                request.condenserOutletQuality(),
                                null)),
                Coils.load(request.massFlow(), request.heat()),
                Si.optional(request.leavingDryBulb()),
                Optional.ofNullable(request.condensing())
                        .map(level -> input.engine("condensing", () -> OutletConditions.level(level))),
                conductance(request),
                Coils.fan(request.fan()),
                Coils.dirt(request.dirt()),
                Si.optional(request.dirt().cleanConductance()),
                Guidances.of(input),
                input.explain());
    }

    private static void check(Input<CoilRequest> input) {
        Coils.checkAir(input);
        input.exactlyOne("condenserInletTemperature", "inletSuperheat");
        input.exactlyOne(OUTLET);
        boolean zones = Stream.of(ZONES).anyMatch(input::given);
        if (zones) {
            Stream.of(ZONES).forEach(input::exactlyOne);
        }
        String conductance = zones ? ZONES[1] : "conductance";
        boolean measured = input.given("condensing.temperature") || input.given("condensing.pressure");
        if (measured) {
            input.exactlyOne("condensing.temperature", "condensing.pressure", conductance);
            input.exactlyOne("massFlow", "heat", "leavingDryBulb");
            Coils.checkMeasured(input, conductance);
        } else {
            input.exactlyOne(conductance, "condensing.temperature", "condensing.pressure");
            input.exactlyOne("massFlow", "heat");
            for (String path : List.of("leavingDryBulb", "cleanConductance")) {
                input.needs(path, "condensing.temperature", "it is a reading beside a measured level.");
            }
        }
        if (zones) {
            input.atMostOne("conductance", ZONES[1]);
        }
    }

    private static CoilInlet inletSuperheat(Input<CoilRequest> input) {
        double kelvin = input.request().inletSuperheat().value();
        return input.engine("inletSuperheat", () -> CoilInlet.superheat(kelvin));
    }

    private static Optional<Conductance> conductance(CoilRequest request) {
        return request.zoneConductances() == null
                ? Optional.ofNullable(request.conductance()).map(whole -> Conductance.uniform(whole.value()))
                : Optional.of(zones(request.zoneConductances()));
    }

    static Conductance zones(ZoneConductances zones) {
        return new Conductance(
                zones.desuperheating().value(),
                zones.condensing().value(),
                zones.subcooling().value());
    }

    private static CoilReply reply(Input<CoilRequest> input, AirCooledCondenser.Result result, Trust trust) {
        Output out = input.output();
        return new CoilReply(
                List.of(States.of(out, result.inlet()), States.of(out, result.outlet())),
                Levels.of(out, result.condensing()),
                out.of(QuantityKind.MASS_FLOW, result.operating().massFlow()),
                out.of(QuantityKind.POWER, result.operating().heat()),
                result.operating().zones().stream().map(zone -> zone(out, zone)).toList(),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, result.conductance().condensing()),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, result.simpleConductance()),
                AirStates.of(out, result.entering(), EnthalpyDatum.ZERO_CELSIUS),
                AirStates.of(out, result.leaving(), EnthalpyDatum.ZERO_CELSIUS),
                out.of(QuantityKind.MASS_FLOW, result.air().massFlow()),
                out.of(
                        QuantityKind.VOLUME_FLOW,
                        result.air().massFlow() * result.air().state().specificVolume()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.condensingOverAmbient()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.approach()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.pinch().pinch()),
                CoilZoneName.valueOf(result.pinch().kind().name()),
                out.plain(result.cleanliness().ratio()),
                out.of(QuantityKind.FOULING_RESISTANCE, result.cleanliness().foulingResistance()),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.COIL),
                trust.cautions(input));
    }

    static CoilZoneFigures zone(Output out, CoilZone zone) {
        return new CoilZoneFigures(
                CoilZoneName.valueOf(zone.kind().name()),
                out.of(QuantityKind.POWER, zone.heat()),
                zone.share(),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, zone.conductance()),
                out.of(QuantityKind.TEMPERATURE, zone.refrigerantInlet()),
                out.of(QuantityKind.TEMPERATURE, zone.refrigerantOutlet()),
                out.of(QuantityKind.TEMPERATURE, zone.airInlet()),
                out.of(QuantityKind.TEMPERATURE, zone.airOutlet()),
                zone.effectiveness(),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, zone.pinch()));
    }
}
