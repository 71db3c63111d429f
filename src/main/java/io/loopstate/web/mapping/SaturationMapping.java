package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.SaturationQuery;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.BlendComponent;
import io.loopstate.web.dto.SaturationReply;
import io.loopstate.web.dto.SaturationRequest;
import java.util.List;
import java.util.Map;

/** Both sides of the dome at a temperature or a pressure. */
public final class SaturationMapping {
    /** The calculation. */
    public static final Operation<SaturationRequest, SaturationQuery.Spec, SaturationQuery.Result, SaturationReply>
            OPERATION = new Operation<>(
                    SaturationRequest.class,
                    SaturationMapping::spec,
                    SaturationQuery::calculate,
                    SaturationMapping::reply,
                    Map.of());

    private SaturationMapping() {}

    private static SaturationQuery.Spec spec(Input<SaturationRequest> input) {
        input.exactlyOne("temperature", "pressure");
        input.refuseFaults();
        SaturationRequest request = input.request();
        return request.temperature() == null
                ? spec(input, Variable.PRESSURE, request.pressure().value())
                : spec(input, Variable.TEMPERATURE, request.temperature().value());
    }

    private static SaturationQuery.Spec spec(Input<SaturationRequest> input, Variable given, double value) {
        return new SaturationQuery.Spec(
                input.equilibrium(), given, value, input.transportShown(SaturationReply.class), Guidance.common());
    }

    private static SaturationReply reply(Input<SaturationRequest> input, SaturationQuery.Result result, Trust trust) {
        Output out = input.output();
        Saturation saturation = result.saturation();
        boolean atPressure = input.given("pressure");
        return new SaturationReply(
                States.of(out, saturation.bubble(), result.bubbleTransport()),
                States.of(out, saturation.dew(), result.dewTransport()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, atPressure ? saturation.temperatureGlide() : Double.NaN),
                out.of(QuantityKind.PRESSURE_DIFFERENCE, atPressure ? Double.NaN : saturation.pressureGlide()),
                out.of(QuantityKind.SPECIFIC_ENERGY, saturation.latentHeat()),
                phase(input, result.firstVapor()),
                phase(input, result.firstLiquid()),
                trust.working(input, () -> PropertySteps.saturation(input.equilibrium(), atPressure, saturation)),
                trust.basisWithTransport(input),
                trust.warnings(input, result.findings()),
                trust.cautions(input));
    }

    private static List<BlendComponent> phase(Input<SaturationRequest> input, List<Double> moleFractions) {
        return input.equilibrium().refrigerant() instanceof Blend blend
                ? BlendComponents.of(blend.mixture(), moleFractions)
                : null;
    }
}
