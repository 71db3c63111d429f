package io.loopstate.web.mapping;

import io.loopstate.engine.component.HeatRejection;
import io.loopstate.engine.cycle.DesignCycle;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.Performance;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.RejectedHeat;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The performance of a designed cycle in the units of the reply. */
final class Performances {
    private Performances() {}

    static Performance of(Output out, DesignCycle.Performance cycle, Optional<DesignCycle.Sizing> sizing) {
        Sized sized = new Sized(out, sizing);
        return new Performance(
                cycle.pressureRatio(),
                energy(out, cycle.isentropicWork()),
                energy(out, cycle.compressorWork()),
                energy(out, cycle.compressorHeatLoss()),
                energy(out, cycle.refrigeratingEffect()),
                energy(out, cycle.suctionLineHeatGain()),
                energy(out, cycle.dischargeLineHeatLoss()),
                energy(out, cycle.liquidLineHeatGain()),
                energy(out, cycle.heatRejectionPerMass()),
                parts(out, cycle.heatRejection()),
                cycle.heatRejectionFactor(),
                cycle.coefficientOfPerformance(),
                cycle.heatingCoefficientOfPerformance(),
                cycle.energyEfficiencyRatio(),
                out.of(QuantityKind.POWER, cycle.powerPerTon()),
                out.plain(cycle.carnotCoefficientOfPerformance()),
                out.plain(cycle.carnotShare()),
                out.of(QuantityKind.TEMPERATURE, cycle.dischargeTemperature()),
                out.of(QuantityKind.VOLUMETRIC_CAPACITY, cycle.volumetricCapacity()),
                out.plain(cycle.valveInletQuality()),
                out.plain(cycle.evaporatorInletQuality()),
                sized.number(QuantityKind.MASS_FLOW, DesignCycle.Sizing::massFlow),
                sized.number(QuantityKind.POWER, DesignCycle.Sizing::refrigeratingCapacity),
                sized.number(QuantityKind.POWER, DesignCycle.Sizing::compressorPower),
                sized.optional(QuantityKind.POWER, DesignCycle.Sizing::electricalPower),
                sized.number(QuantityKind.POWER, DesignCycle.Sizing::heatRejected),
                sized.number(QuantityKind.VOLUME_FLOW, DesignCycle.Sizing::suctionVolumeFlow),
                sized.optional(QuantityKind.VOLUME_FLOW, DesignCycle.Sizing::displacement));
    }

    private static Quantity energy(Output out, double value) {
        return out.of(QuantityKind.SPECIFIC_ENERGY, value);
    }

    private static RejectedHeat parts(Output out, HeatRejection heat) {
        return new RejectedHeat(
                energy(out, heat.desuperheating()),
                energy(out, heat.condensing()),
                energy(out, heat.subcooling()),
                energy(out, heat.gasCooling()));
    }

    /** The figures of a machine, absent where its size is not known. */
    private record Sized(Output out, Optional<DesignCycle.Sizing> sizing) {
        Quantity number(QuantityKind kind, ToDoubleFunction<DesignCycle.Sizing> figure) {
            return sizing.map(size -> out.of(kind, figure.applyAsDouble(size))).orElse(null);
        }

        Quantity optional(QuantityKind kind, Function<DesignCycle.Sizing, OptionalDouble> figure) {
            return sizing.map(size -> out.of(kind, figure.apply(size))).orElse(null);
        }
    }
}
