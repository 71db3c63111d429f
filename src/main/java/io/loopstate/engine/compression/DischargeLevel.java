package io.loopstate.engine.compression;

import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pressure that a compressor works against as it is stated: a level, or a ratio to the suction pressure.
 *
 * @param level pressure or dew-point temperature
 * @param pressureRatio of absolute pressures, above 1
 */
public record DischargeLevel(Optional<SaturationLevel> level, OptionalDouble pressureRatio) {
    public DischargeLevel {
        Objects.requireNonNull(level);
        if (level.isPresent() == pressureRatio.isPresent()) {
            throw new IllegalArgumentException("either a level or a ratio");
        }
        pressureRatio.ifPresent(DischargeLevel::requireRatio);
    }

    /** A pressure or a dew-point temperature. */
    public static DischargeLevel of(SaturationLevel level) {
        return new DischargeLevel(Optional.of(level), OptionalDouble.empty());
    }

    /** A pressure, Pa absolute. */
    public static DischargeLevel pressure(double pascal) {
        return of(SaturationLevel.pressure(pascal));
    }

    /** A ratio of absolute pressures. */
    public static DischargeLevel ratio(double ratio) {
        return new DischargeLevel(Optional.empty(), OptionalDouble.of(ratio));
    }

    /**
     * The pressure, Pa.
     *
     * @throws EngineException about {@code discharge}; {@code CONTRADICTORY_INPUTS} unless it lies above the suction's
     */
    public double pressure(Equilibrium equilibrium, double suctionPressure) {
        double pressure = level.isPresent()
                ? Inputs.trace("discharge", () -> level.get().pressure(equilibrium))
                : pressureRatio.getAsDouble() * suctionPressure;
        if (!(pressure > suctionPressure)) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "A compressor raises the pressure: the discharge pressure is not above the suction pressure.",
                            Variable.PRESSURE,
                            pressure,
                            suctionPressure,
                            Double.NaN)
                    .about("discharge");
        }
        return pressure;
    }

    private static void requireRatio(double ratio) {
        if (!(ratio > 1) || Double.isInfinite(ratio)) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "A compressor raises the pressure: the ratio is above 1.",
                    "pressureRatio",
                    ratio,
                    1,
                    Double.NaN);
        }
    }
}
