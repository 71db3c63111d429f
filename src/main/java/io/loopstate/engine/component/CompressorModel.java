package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is known of a compressor besides the states at its ports.
 *
 * @param kind where the motor's heat goes
 * @param isentropicEfficiency isentropic work over work put into the refrigerant by the piston, scroll or screw, above 0
 *     to 1
 * @param heatLossFraction share of the work that the shell gives off to its surroundings, 0 to below 1
 * @param volumetricEfficiency suction volume flow over displacement, above 0 to 1
 * @param motorEfficiency shaft power over electrical power, above 0 to 1
 */
public record CompressorModel(
        CompressorKind kind,
        double isentropicEfficiency,
        double heatLossFraction,
        OptionalDouble volumetricEfficiency,
        OptionalDouble motorEfficiency) {
    public CompressorModel {
        Objects.requireNonNull(kind);
        share("isentropicEfficiency", isentropicEfficiency);
        volumetricEfficiency.ifPresent(value -> share("volumetricEfficiency", value));
        motorEfficiency.ifPresent(value -> share("motorEfficiency", value));
        if (!(heatLossFraction >= 0 && heatLossFraction < 1)) {
            throw impossible("heatLossFraction", "A share of heat lost is 0 or more and below 1.", heatLossFraction);
        }
    }

    /** An open compressor without heat loss. */
    public static CompressorModel of(double isentropicEfficiency) {
        return new CompressorModel(
                CompressorKind.OPEN, isentropicEfficiency, 0, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Isentropic work over all the work that reaches the refrigerant: of a hermetic compressor with a known motor the
     * product of both efficiencies, since the motor heats the refrigerant; else the isentropic efficiency.
     */
    public double effectiveEfficiency() {
        return kind == CompressorKind.HERMETIC
                ? isentropicEfficiency * motorEfficiency.orElse(1)
                : isentropicEfficiency;
    }

    private static void share(String name, double value) {
        if (!(value > 0 && value <= 1)) {
            throw impossible(name, "An efficiency is above 0 and at most 1.", value);
        }
    }

    private static EngineException impossible(String name, String message, double value) {
        return EngineException.of(ErrorCode.IMPOSSIBLE_VALUE, message, name, value, 0, 1);
    }
}
