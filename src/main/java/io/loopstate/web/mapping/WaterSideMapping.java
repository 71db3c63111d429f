package io.loopstate.web.mapping;

import io.loopstate.engine.rejection.AirFigures;
import io.loopstate.engine.rejection.AirSide;
import io.loopstate.engine.rejection.Brine;
import io.loopstate.engine.rejection.CoolingTower;
import io.loopstate.engine.rejection.WaterSide;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.CoolingTowerFigures;
import io.loopstate.web.dto.WaterSideReply;
import io.loopstate.web.dto.WaterSideRequest;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The water of a condenser or chiller. */
public final class WaterSideMapping {
    private static final String WATER = "R-718";
    private static final String BRINE = "brine";
    /** Pa: what stands in a pipe of a building; it changes nothing that shows. */
    private static final double USUAL_PRESSURE = 300e3;

    /** The calculation. */
    public static final Operation<WaterSideRequest, WaterSide.Spec, WaterSide.Result, WaterSideReply> OPERATION =
            new Operation<>(
                    WaterSideRequest.class,
                    WaterSideMapping::spec,
                    WaterSide::calculate,
                    WaterSideMapping::reply,
                    Map.of());

    private WaterSideMapping() {}

    private static WaterSide.Spec spec(Input<WaterSideRequest> input) {
        String flow = input.given("massFlow") ? "massFlow" : "volumeFlow";
        input.exactly(3, flow, "enteringTemperature", "leavingTemperature", "heat");
        input.atMostOne("volumeFlow", "massFlow");
        input.needs("density", "specificHeatCapacity", "both together stand for a mixture.");
        input.needs("specificHeatCapacity", "density", "both together stand for a mixture.");
        input.refuseFaults();
        WaterSideRequest request = input.request();
        return new WaterSide.Spec(
                input.equilibrium(WATER),
                AirSide.Coil.valueOf(request.coil().name()),
                request.pressure() == null ? USUAL_PRESSURE : request.pressure().value(),
                Si.optional(request.enteringTemperature()),
                Si.optional(request.leavingTemperature()),
                Si.optional(request.massFlow()),
                Si.optional(request.volumeFlow()),
                Si.optional(request.heat()),
                Si.optional(request.saturationTemperature()),
                Optional.ofNullable(request.coolingTower())
                        .map(tower -> new CoolingTower.Conditions(
                                Si.optional(tower.wetBulb()), Si.optional(tower.cyclesOfConcentration()))),
                Si.orZero(request.glycolShare()),
                Optional.ofNullable(request.density())
                        .map(density -> new Brine(
                                density.value(), request.specificHeatCapacity().value())),
                Guidances.of(input),
                input.explain());
    }

    private static WaterSideReply reply(Input<WaterSideRequest> asked, WaterSide.Result result, Trust trust) {
        Input<WaterSideRequest> input = asked.withOutput(asked.output().forWater());
        Output out = input.output();
        WaterSide.Figures figures = result.figures();
        return new WaterSideReply(
                out.of(QuantityKind.TEMPERATURE, figures.entering()),
                out.of(QuantityKind.TEMPERATURE, figures.leaving()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, figures.temperatureChange()),
                out.of(QuantityKind.MASS_FLOW, figures.massFlow()),
                out.of(QuantityKind.VOLUME_FLOW, figures.volumeFlow()),
                out.of(QuantityKind.POWER, figures.heat()),
                out.of(QuantityKind.SPECIFIC_ENTROPY, figures.heatCapacity()),
                out.of(QuantityKind.SENSIBLE_HEAT_FACTOR, figures.factor()),
                out.of(
                        QuantityKind.TEMPERATURE_DIFFERENCE,
                        number(figures, AirFigures.Refrigerant::enteringDifference)),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, number(figures, AirFigures.Refrigerant::approach)),
                out.plain(number(figures, AirFigures.Refrigerant::effectiveness)),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, optional(figures, AirFigures.Refrigerant::meanDifference)),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, optional(figures, AirFigures.Refrigerant::conductance)),
                figures.tower().map(tower -> tower(out, tower)).orElse(null),
                trust.working(input, result.steps()),
                input.request().density() == null
                        ? trust.basis(input, input.equilibrium(WATER))
                        : trust.basisAsGiven(input, input.equilibrium(WATER), BRINE),
                trust.warnings(input, result.findings(), UnitSlips.WATER_SIDE),
                trust.airCautions());
    }

    private static CoolingTowerFigures tower(Output out, CoolingTower tower) {
        return new CoolingTowerFigures(
                out.of(QuantityKind.MASS_FLOW, tower.evaporation()),
                out.of(QuantityKind.MASS_FLOW, tower.bleed()),
                out.of(QuantityKind.MASS_FLOW, tower.makeUp()),
                tower.nominalTons(),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, tower.range()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, tower.approach()));
    }

    private static OptionalDouble number(WaterSide.Figures figures, Function<AirFigures.Refrigerant, Double> figure) {
        return optional(figures, refrigerant -> OptionalDouble.of(figure.apply(refrigerant)));
    }

    private static OptionalDouble optional(
            WaterSide.Figures figures, Function<AirFigures.Refrigerant, OptionalDouble> figure) {
        return figures.refrigerant().map(figure).orElse(OptionalDouble.empty());
    }
}
