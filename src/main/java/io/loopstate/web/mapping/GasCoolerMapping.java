package io.loopstate.web.mapping;

import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.rejection.AirCooledGasCooler;
import io.loopstate.engine.rejection.Arrangement;
import io.loopstate.engine.rejection.GasCoolerCoil;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.GasCoolerArrangement;
import io.loopstate.web.dto.GasCoolerReply;
import io.loopstate.web.dto.GasCoolerRequest;
import io.loopstate.web.dto.GasCoolerSegment;
import java.util.List;
import java.util.Map;

/** An air-cooled gas cooler. */
public final class GasCoolerMapping {
    private static final String OUTLET = "gasCoolerOutletTemperature";

    /** The calculation. */
    public static final Operation<GasCoolerRequest, AirCooledGasCooler.Spec, AirCooledGasCooler.Result, GasCoolerReply>
            OPERATION = new Operation<>(
                    GasCoolerRequest.class,
                    GasCoolerMapping::spec,
                    AirCooledGasCooler::calculate,
                    GasCoolerMapping::reply,
                    Map.of());

    private GasCoolerMapping() {}

    private static AirCooledGasCooler.Spec spec(Input<GasCoolerRequest> input) {
        check(input);
        input.refuseFaults();
        GasCoolerRequest request = input.request();
        return new AirCooledGasCooler.Spec(
                input.equilibrium(),
                input.atmosphere().pressure(),
                AirSideMapping.air(input, "entering"),
                AirSideMapping.airflow(request.airflow()),
                request.arrangement() == GasCoolerArrangement.CROSS_FLOW ? Arrangement.CROSS_FLOW : Arrangement.SERIES,
                request.pressure().value(),
                request.gasCoolerInletTemperature().value(),
                Si.optional(request.gasCoolerOutletTemperature()),
                Coils.load(request.massFlow(), request.heat()),
                Si.optional(request.leavingDryBulb()),
                Si.optional(request.conductance()),
                Coils.fan(request.fan()),
                Coils.dirt(request.dirt()),
                Si.optional(request.dirt().cleanConductance()),
                Guidances.of(input),
                input.explain());
    }

    private static void check(Input<GasCoolerRequest> input) {
        Coils.checkAir(input);
        input.exactlyOne("conductance", OUTLET);
        if (input.given(OUTLET)) {
            input.exactlyOne("massFlow", "heat", "leavingDryBulb");
            Coils.checkMeasured(input, "conductance");
        } else {
            input.exactlyOne("massFlow", "heat");
            for (String path : List.of("leavingDryBulb", "cleanConductance")) {
                input.needs(path, OUTLET, "it is a reading beside a measured outlet.");
            }
        }
    }

    private static GasCoolerReply reply(Input<GasCoolerRequest> input, AirCooledGasCooler.Result result, Trust trust) {
        Output out = input.output();
        GasCoolerCoil.Operating operating = result.operating();
        return new GasCoolerReply(
                List.of(States.of(out, result.inlet()), States.of(out, result.outlet())),
                out.of(QuantityKind.MASS_FLOW, operating.massFlow()),
                out.of(QuantityKind.POWER, operating.heat()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, result.approach()),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, operating.conductance()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, operating.pinch()),
                out.of(QuantityKind.TEMPERATURE, operating.pinchTemperature()),
                operating.segments().stream()
                        .map(segment -> segment(out, segment))
                        .toList(),
                AirStates.of(out, result.entering(), EnthalpyDatum.ZERO_CELSIUS),
                AirStates.of(out, result.leaving(), EnthalpyDatum.ZERO_CELSIUS),
                out.of(QuantityKind.MASS_FLOW, result.air().massFlow()),
                out.of(
                        QuantityKind.VOLUME_FLOW,
                        result.air().massFlow() * result.air().state().specificVolume()),
                out.plain(result.cleanliness().ratio()),
                out.of(QuantityKind.FOULING_RESISTANCE, result.cleanliness().foulingResistance()),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.GAS_COOLER),
                trust.cautions(input));
    }

    private static GasCoolerSegment segment(Output out, GasCoolerCoil.Segment segment) {
        return new GasCoolerSegment(
                out.of(QuantityKind.POWER, segment.heat()),
                segment.share(),
                out.of(QuantityKind.TEMPERATURE, segment.refrigerantInlet()),
                out.of(QuantityKind.TEMPERATURE, segment.refrigerantOutlet()),
                out.of(QuantityKind.TEMPERATURE, segment.airInlet()),
                out.of(QuantityKind.TEMPERATURE, segment.airOutlet()));
    }
}
