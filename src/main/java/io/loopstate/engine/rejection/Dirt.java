package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.OptionalDouble;

/**
 * Dirt on the coil.
 *
 * @param resistance m2 K/W, 0 for a clean coil
 * @param area m2 on which it lies; needed for a resistance
 */
public record Dirt(double resistance, OptionalDouble area) {
    public Dirt {
        Require.notNegative("foulingResistance", resistance);
        Require.positive("area", area);
        if (resistance > 0 && area.isEmpty()) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS, "A fouling resistance needs the area that it covers.")
                    .about("area");
        }
    }

    /** The conductance (W/K) of a coil under this layer: 1 / UA' = 1 / UA + R / A. */
    double under(double clean) {
        return resistance > 0 ? 1 / (1 / clean + resistance / area.orElseThrow()) : clean;
    }

    /** A clean coil. */
    public static Dirt none() {
        return new Dirt(0, OptionalDouble.empty());
    }
}
