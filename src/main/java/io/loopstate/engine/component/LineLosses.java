package io.loopstate.engine.component;

import java.util.Objects;

/**
 * What pipes and coils cost: pressure drops, and heat exchanged by the lines outside the cooled space.
 *
 * @param evaporatorPressureDrop Pa
 * @param suctionLinePressureDrop Pa
 * @param dischargeLinePressureDrop Pa
 * @param condenserPressureDrop Pa
 * @param liquidLinePressureDrop Pa, negative where the line falls and gains more than it loses
 * @param suctionLineGain heat taken up between evaporator and compressor, which cools nothing useful
 * @param dischargeLineHeatLoss J/kg given off between compressor and condenser
 * @param liquidLineHeatGain J/kg taken up between condenser and valve, negative if given off
 */
public record LineLosses(
        double evaporatorPressureDrop,
        double suctionLinePressureDrop,
        double dischargeLinePressureDrop,
        double condenserPressureDrop,
        double liquidLinePressureDrop,
        SuctionLineGain suctionLineGain,
        double dischargeLineHeatLoss,
        double liquidLineHeatGain) {
    public LineLosses {
        Objects.requireNonNull(suctionLineGain);
        Require.notNegative("evaporatorPressureDrop", evaporatorPressureDrop);
        Require.notNegative("suctionLinePressureDrop", suctionLinePressureDrop);
        Require.notNegative("dischargeLinePressureDrop", dischargeLinePressureDrop);
        Require.notNegative("condenserPressureDrop", condenserPressureDrop);
        Require.finite("liquidLinePressureDrop", liquidLinePressureDrop);
        Require.finite("dischargeLineHeatLoss", dischargeLineHeatLoss);
        Require.finite("liquidLineHeatGain", liquidLineHeatGain);
    }

    /** No drop, no heat. */
    public static LineLosses none() {
        return new LineLosses(0, 0, 0, 0, 0, SuctionLineGain.none(), 0, 0);
    }

    public LineLosses withSuctionLineGain(SuctionLineGain gain) {
        return new LineLosses(
                evaporatorPressureDrop,
                suctionLinePressureDrop,
                dischargeLinePressureDrop,
                condenserPressureDrop,
                liquidLinePressureDrop,
                gain,
                dischargeLineHeatLoss,
                liquidLineHeatGain);
    }
}
