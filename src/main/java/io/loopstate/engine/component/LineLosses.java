package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
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
        drop("evaporatorPressureDrop", evaporatorPressureDrop);
        drop("suctionLinePressureDrop", suctionLinePressureDrop);
        drop("dischargeLinePressureDrop", dischargeLinePressureDrop);
        drop("condenserPressureDrop", condenserPressureDrop);
        finite("liquidLinePressureDrop", liquidLinePressureDrop);
        finite("dischargeLineHeatLoss", dischargeLineHeatLoss);
        finite("liquidLineHeatGain", liquidLineHeatGain);
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

    private static void drop(String name, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw EngineException.of(
                            ErrorCode.IMPOSSIBLE_VALUE,
                            "Pressure falls in the direction of flow: a pressure drop is zero or more.",
                            Variable.PRESSURE,
                            value,
                            0,
                            Double.NaN)
                    .about(name);
        }
    }

    private static void finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE, "The value is not a number.", name, value, Double.NaN, Double.NaN);
        }
    }
}
