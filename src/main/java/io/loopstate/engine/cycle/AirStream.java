package io.loopstate.engine.cycle;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What was measured in the air of one coil.
 *
 * @param entering dry bulb, K
 * @param leaving dry bulb, K
 * @param volumeFlow m3/s at the entering condition; give this or the mass flow
 * @param massFlow kg/s of dry air
 * @param totalHeat W exchanged with the air, sensible and latent, where it was measured another way
 */
public record AirStream(
        OptionalDouble entering,
        OptionalDouble leaving,
        OptionalDouble volumeFlow,
        OptionalDouble massFlow,
        OptionalDouble totalHeat) {
    public AirStream {
        Objects.requireNonNull(entering);
        Objects.requireNonNull(leaving);
        Objects.requireNonNull(volumeFlow);
        Objects.requireNonNull(massFlow);
        Objects.requireNonNull(totalHeat);
    }

    /** Nothing measured. */
    public static AirStream none() {
        OptionalDouble none = OptionalDouble.empty();
        return new AirStream(none, none, none, none, none);
    }
}
