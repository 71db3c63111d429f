package io.loopstate.engine.component;

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
        Require.efficiency("isentropicEfficiency", isentropicEfficiency);
        Require.efficiency("volumetricEfficiency", volumetricEfficiency);
        Require.efficiency("motorEfficiency", motorEfficiency);
        Require.properShare("heatLossFraction", heatLossFraction);
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
}
