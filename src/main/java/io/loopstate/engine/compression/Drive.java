package io.loopstate.engine.compression;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.Objects;

/**
 * Motor and transmission, and where their heat goes.
 *
 * @param housing how motor and compressor are put together
 * @param cooling what takes up the motor's heat
 * @param motorEfficiency power at the motor's shaft over electrical power, above 0 to 1
 * @param driveEfficiency of belt or coupling, above 0 to 1; its loss goes to the surroundings
 * @param mechanicalEfficiency work on the vapor over work at the compressor's shaft, above 0 to 1; friction ends up in the
 *     vapor, by way of the oil
 * @param heatLossFraction share of the power that enters the housing given off by its shell, 0 to below 1
 */
public record Drive(
        Housing housing,
        MotorCooling cooling,
        double motorEfficiency,
        double driveEfficiency,
        double mechanicalEfficiency,
        double heatLossFraction) {
    public Drive {
        Objects.requireNonNull(housing);
        Objects.requireNonNull(cooling);
        Require.efficiency("motorEfficiency", motorEfficiency);
        Require.efficiency("driveEfficiency", driveEfficiency);
        Require.efficiency("mechanicalEfficiency", mechanicalEfficiency);
        Require.properShare("heatLossFraction", heatLossFraction);
        boolean outside = cooling == MotorCooling.SURROUNDINGS;
        if (housing == Housing.OPEN && !outside || housing == Housing.HERMETIC && outside) {
            throw contradiction(
                    "motorCooling",
                    "The motor of an open compressor is cooled by its surroundings, that of a hermetic one by the vapor.");
        }
        if (housing != Housing.OPEN && driveEfficiency < 1) {
            throw contradiction(
                    "driveEfficiency",
                    "A hermetic or semi-hermetic compressor has no belt or coupling that could lose power.");
        }
    }

    /** The usual cooling: of a hermetic and semi-hermetic compressor by the suction vapor. */
    public static MotorCooling usualCooling(Housing housing) {
        return housing == Housing.OPEN ? MotorCooling.SURROUNDINGS : MotorCooling.SUCTION_GAS;
    }

    /** Motor loss over power at the compressor's shaft. */
    double motorLossShare() {
        return (1 / motorEfficiency - 1) / driveEfficiency;
    }

    private static EngineException contradiction(String input, String message) {
        return EngineException.of(ErrorCode.CONTRADICTORY_INPUTS, message).about(input);
    }
}
