package io.loopstate.web.mapping;

import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.rejection.AirFigures;
import io.loopstate.engine.rejection.AirSide;
import io.loopstate.engine.rejection.MoistAirQuery;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.AirFlowRequest;
import io.loopstate.web.dto.AirSideReply;
import io.loopstate.web.dto.AirSideRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The air of a coil. */
public final class AirSideMapping {
    private static final List<AirVariable> HUMIDITIES = List.of(
            AirVariable.WET_BULB, AirVariable.RELATIVE_HUMIDITY, AirVariable.DEW_POINT, AirVariable.HUMIDITY_RATIO);

    /** The calculation. */
    public static final Operation<AirSideRequest, AirSide.Spec, AirSide.Result, AirSideReply> OPERATION =
            new Operation<>(
                    AirSideRequest.class, AirSideMapping::spec, AirSide::calculate, AirSideMapping::reply, Map.of());

    private AirSideMapping() {}

    private static AirSide.Spec spec(Input<AirSideRequest> input) {
        String flow = input.given("airflow.massFlow") ? "airflow.massFlow" : "airflow.volumeFlow";
        input.exactly(3, flow, "entering.dryBulb", "leaving.dryBulb", "heat");
        input.atMostOne("airflow.volumeFlow", "airflow.massFlow");
        input.needs("airflow.condition", "airflow.volumeFlow", "it says in which air that is counted.");
        oneHumidity(input, "entering");
        oneHumidity(input, "leaving");
        input.refuseFaults();
        AirSideRequest request = input.request();
        return new AirSide.Spec(
                AirSide.Coil.valueOf(request.coil().name()),
                input.atmosphere().pressure(),
                air(input, "entering"),
                air(input, "leaving"),
                Optional.ofNullable(request.airflow()).map(AirSideMapping::airflow),
                Si.optional(request.heat()),
                Si.orZero(request.fanPower()),
                Si.optional(request.saturationTemperature()),
                Guidances.of(input),
                input.explain());
    }

    static void oneHumidity(Input<?> input, String side) {
        input.atMostOne(HUMIDITIES.stream()
                .map(variable -> side + '.' + variable.input())
                .toArray(String[]::new));
    }

    static AirSide.Air air(Input<?> input, String side) {
        return new AirSide.Air(
                input.si(side + ".dryBulb"),
                HUMIDITIES.stream()
                        .filter(variable -> input.given(side + '.' + variable.input()))
                        .map(variable -> new MoistAirQuery.Known(
                                variable,
                                input.si(side + '.' + variable.input()).orElseThrow()))
                        .findFirst());
    }

    static AirSide.Airflow airflow(AirFlowRequest flow) {
        return new AirSide.Airflow(
                Si.optional(flow.massFlow()),
                Si.optional(flow.volumeFlow()),
                flow.condition() == null
                        ? AirSide.FlowCondition.ENTERING
                        : AirSide.FlowCondition.valueOf(flow.condition().name()));
    }

    private static AirSideReply reply(Input<AirSideRequest> input, AirSide.Result result, Trust trust) {
        Output out = input.output();
        AirFigures figures = result.figures();
        AirSide.Coil coil = AirSide.Coil.valueOf(input.request().coil().name());
        return new AirSideReply(
                AirStates.of(out, result.entering(), EnthalpyDatum.ZERO_CELSIUS),
                AirStates.of(out, result.leaving(), EnthalpyDatum.ZERO_CELSIUS),
                out.of(QuantityKind.MASS_FLOW, figures.massFlow()),
                out.of(QuantityKind.VOLUME_FLOW, figures.enteringVolumeFlow()),
                out.of(QuantityKind.VOLUME_FLOW, figures.leavingVolumeFlow()),
                out.of(QuantityKind.VOLUME_FLOW, figures.standardVolumeFlow()),
                out.of(QuantityKind.POWER, figures.heat()),
                out.of(QuantityKind.POWER, figures.sensibleHeat()),
                out.of(QuantityKind.POWER, figures.latentHeat()),
                figures.sensibleHeatRatio(),
                out.of(QuantityKind.MASS_FLOW, figures.condensate()),
                out.of(QuantityKind.POWER, figures.fanHeat()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, figures.temperatureChange()),
                out.of(QuantityKind.VOLUME_FLOW, figures.airflowPerTon()),
                AirStates.of(out, figures.enteringFactors()),
                AirStates.of(out, figures.standardFactors()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, enteringDifference(coil, AirSide.Coil.CONDENSER, figures)),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, enteringDifference(coil, AirSide.Coil.EVAPORATOR, figures)),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, number(figures, AirFigures.Refrigerant::approach)),
                out.plain(number(figures, AirFigures.Refrigerant::effectiveness)),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, optional(figures, AirFigures.Refrigerant::meanDifference)),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, optional(figures, AirFigures.Refrigerant::conductance)),
                trust.working(input, result.steps()),
                trust.airBasis(input, EnthalpyDatum.ZERO_CELSIUS),
                trust.warnings(input, result.findings(), UnitSlips.AIR_SIDE),
                trust.airCautions());
    }

    private static OptionalDouble enteringDifference(AirSide.Coil coil, AirSide.Coil wanted, AirFigures figures) {
        return coil == wanted ? number(figures, AirFigures.Refrigerant::enteringDifference) : OptionalDouble.empty();
    }

    private static OptionalDouble number(AirFigures figures, Function<AirFigures.Refrigerant, Double> figure) {
        return optional(figures, refrigerant -> OptionalDouble.of(figure.apply(refrigerant)));
    }

    private static OptionalDouble optional(
            AirFigures figures, Function<AirFigures.Refrigerant, OptionalDouble> figure) {
        return figures.refrigerant().map(figure).orElse(OptionalDouble.empty());
    }
}
