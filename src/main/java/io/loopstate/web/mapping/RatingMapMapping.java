package io.loopstate.web.mapping;

import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.compression.CoefficientOrder;
import io.loopstate.engine.compression.MapCompressor;
import io.loopstate.engine.compression.MapRating;
import io.loopstate.engine.compression.RatingPolynomial;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.MapFigures;
import io.loopstate.web.dto.MapRequest;
import io.loopstate.web.dto.PolynomialOrder;
import io.loopstate.web.dto.PolynomialRequest;
import io.loopstate.web.dto.RatingMapReply;
import io.loopstate.web.dto.RatingMapRequest;
import io.loopstate.web.dto.TemperatureScale;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** A compressor by its rating map. */
public final class RatingMapMapping {
    private static final Map<String, QuantityKind> POLYNOMIALS = Map.of(
            "massFlow", QuantityKind.MASS_FLOW,
            "capacity", QuantityKind.POWER,
            "power", QuantityKind.POWER,
            "current", QuantityKind.ELECTRIC_CURRENT);

    /** The engine's name of the conditions of a rating, and the members that give them. */
    static final String RATING = "map.rating";

    static final List<String> RATING_MEMBERS = List.of(
            "map.ratedSuperheat", "map.ratedReturnGasTemperature", "map.ratedSubcooling", "map.ratedLiquidTemperature");

    /** The calculation. */
    public static final Operation<RatingMapRequest, MapRating.Spec, MapRating.Result, RatingMapReply> OPERATION =
            new Operation<>(
                    RatingMapRequest.class,
                    RatingMapMapping::spec,
                    MapRating::calculate,
                    RatingMapMapping::reply,
                    Map.of("discharge", Ports.INPUTS.get("discharge"), RATING, RATING_MEMBERS));

    private RatingMapMapping() {}

    private static MapRating.Spec spec(Input<RatingMapRequest> input) {
        Ports.check(input);
        Machines.checkCircuit(input);
        Supplier<MapCompressor> map = map(input, input.request().map());
        input.refuseFaults();
        RatingMapRequest request = input.request();
        return new MapRating.Spec(
                input.equilibrium(),
                Ports.suction(input),
                Ports.discharge(input),
                map.get(),
                Machines.circuit(input, request.liquid(), request.evaporatorOutletTemperature()),
                input.atmosphere().pressure(),
                Guidances.of(input),
                input.explain());
    }

    /** Checks the map of a request; it can be had once the request has no fault. */
    static Supplier<MapCompressor> map(Input<?> input, MapRequest map) {
        input.exactlyOne("map.massFlow.coefficients", "map.capacity.coefficients");
        input.exactlyOne("map.power.coefficients");
        input.exactlyOne("map.ratedSuperheat", "map.ratedReturnGasTemperature");
        input.atMostOne("map.ratedSubcooling", "map.ratedLiquidTemperature");
        Envelopes.check(input, map);
        Optional<RatingPolynomial> massFlow = polynomial(input, map, "massFlow");
        Optional<RatingPolynomial> capacity = polynomial(input, map, "capacity");
        Optional<RatingPolynomial> power = polynomial(input, map, "power");
        Optional<RatingPolynomial> current = polynomial(input, map, "current");
        return () -> new MapCompressor(
                massFlow,
                capacity,
                power.orElseThrow(),
                current,
                input.engine("map.ratedSuperheat", () -> suction(map)),
                input.engine("map.ratedSubcooling", () -> liquid(map)),
                map.superheatCorrectionFactor() == null ? MapCompressor.USUAL_FACTOR : map.superheatCorrectionFactor(),
                Si.orZero(map.heatLossFraction()),
                Envelopes.envelope(map.envelope(), degree(map.temperatureUnit())),
                Boolean.TRUE.equals(map.extrapolate()));
    }

    /** The polynomial of a quantity, with faults for what is missing of it. */
    private static Optional<RatingPolynomial> polynomial(Input<?> input, MapRequest map, String name) {
        String path = "map." + name;
        input.needs(path + ".coefficients", path + ".unit", "the coefficients count in it.");
        input.needs(path + ".unit", path + ".coefficients", "there are ten of them.");
        Optional<UnitToken> unit = input.unit(path + ".unit", POLYNOMIALS.get(name));
        PolynomialRequest request = map == null ? null : of(map, name);
        if (request == null || request.coefficients() == null) {
            return Optional.empty();
        }
        input.requireLength(path + ".coefficients", request.coefficients(), CoefficientOrder.COUNT);
        if (unit.isEmpty()
                || map.temperatureUnit() == null
                || request.coefficients().size() != CoefficientOrder.COUNT) {
            return Optional.empty();
        }
        UnitToken degree = degree(map.temperatureUnit());
        return Optional.of(new RatingPolynomial(
                request.coefficients(),
                order(map.coefficientOrder()),
                degree.factor(),
                degree.offset(),
                unit.get().factor()));
    }

    private static PolynomialRequest of(MapRequest map, String name) {
        return switch (name) {
            case "massFlow" -> map.massFlow();
            case "capacity" -> map.capacity();
            case "power" -> map.power();
            default -> map.current();
        };
    }

    static UnitToken degree(TemperatureScale scale) {
        return UnitToken.of(WireNames.name(scale));
    }

    static CoefficientOrder order(PolynomialOrder order) {
        return order == null || order == PolynomialOrder.EN_12900
                ? CoefficientOrder.AHRI_540
                : CoefficientOrder.valueOf(order.name());
    }

    private static OutletCondition suction(MapRequest map) {
        return map.ratedSuperheat() == null
                ? OutletCondition.temperature(map.ratedReturnGasTemperature().value())
                : OutletCondition.superheat(map.ratedSuperheat().value());
    }

    private static OutletCondition liquid(MapRequest map) {
        return map.ratedLiquidTemperature() == null
                ? OutletCondition.subcooling(Si.orZero(map.ratedSubcooling()))
                : OutletCondition.temperature(map.ratedLiquidTemperature().value());
    }

    private static RatingMapReply reply(Input<RatingMapRequest> input, MapRating.Result result, Trust trust) {
        Output out = input.output();
        return new RatingMapReply(
                result.points().stream().map(point -> States.of(out, point)).toList(),
                figures(out, result.figures()),
                result.balance()
                        .map(balance -> DisplacementMapping.balance(out, balance))
                        .orElse(null),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings(), UnitSlips.COMPRESSION_PORTS),
                trust.cautions(input));
    }

    private static MapFigures figures(Output out, MapRating.Figures figures) {
        return new MapFigures(
                out.of(QuantityKind.TEMPERATURE, figures.suctionDew()),
                out.of(QuantityKind.TEMPERATURE, figures.dischargeDew()),
                figures.pressureRatio(),
                out.of(QuantityKind.MASS_FLOW, figures.ratedMassFlow()),
                out.of(QuantityKind.POWER, figures.ratedPower()),
                out.of(QuantityKind.POWER, figures.ratedCapacity()),
                out.of(QuantityKind.TEMPERATURE, figures.ratedSuctionTemperature()),
                out.of(QuantityKind.MASS_FLOW, figures.massFlow()),
                out.of(QuantityKind.POWER, figures.power()),
                out.of(QuantityKind.ELECTRIC_CURRENT, figures.current()),
                out.of(QuantityKind.POWER, figures.heatLoss()),
                figures.overallEfficiency(),
                out.of(QuantityKind.TEMPERATURE, figures.dischargeTemperature()),
                figures.insideEnvelope());
    }
}
