package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.FieldReadings;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.HeatBalance;
import io.loopstate.web.dto.HeatRoute;
import io.loopstate.web.dto.MeasuredCompression;
import io.loopstate.web.dto.MeasuredPerformance;
import io.loopstate.web.dto.RouteBound;
import io.loopstate.web.dto.RouteOrigin;

/** Parts of what readings determine, in the units of the reply. */
final class Measurements {
    private Measurements() {}

    static MeasuredCompression of(Output out, FieldReadings.Compression compression) {
        return new MeasuredCompression(
                compression.isentropicEfficiency(),
                out.of(QuantityKind.SPECIFIC_ENERGY, compression.isentropicWork()),
                out.of(QuantityKind.SPECIFIC_ENERGY, compression.work()));
    }

    static MeasuredPerformance of(Output out, FieldReadings.PerMass cycle) {
        return new MeasuredPerformance(
                out.of(QuantityKind.SPECIFIC_ENERGY, cycle.refrigeratingEffect()),
                out.of(QuantityKind.SPECIFIC_ENERGY, cycle.compressorWork()),
                out.of(QuantityKind.SPECIFIC_ENERGY, cycle.heatRejection()),
                out.plain(cycle.coefficientOfPerformance()),
                out.plain(cycle.energyEfficiencyRatio()),
                out.plain(cycle.carnotCoefficientOfPerformance()),
                out.plain(cycle.evaporatorInletQuality()));
    }

    static HeatRoute of(Output out, FieldReadings.Route route) {
        return new HeatRoute(
                RouteOrigin.valueOf(route.name().name()),
                RouteBound.valueOf(route.bound().name()),
                out.of(QuantityKind.MASS_FLOW, route.massFlow()),
                out.of(QuantityKind.POWER, route.refrigeratingCapacity()),
                out.of(QuantityKind.POWER, route.compressorPower()),
                out.of(QuantityKind.POWER, route.heatRejected()),
                route.assumptions());
    }

    static HeatBalance of(Output out, FieldReadings.Balance balance) {
        return new HeatBalance(
                RouteOrigin.valueOf(balance.first().name()),
                RouteOrigin.valueOf(balance.second().name()),
                out.of(QuantityKind.POWER, balance.firstHeat()),
                out.of(QuantityKind.POWER, balance.secondHeat()),
                balance.difference());
    }
}
