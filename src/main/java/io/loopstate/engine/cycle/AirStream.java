package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
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

    /** Throws unless every figure is possible; errors name the coil and the figure. */
    void require(String coil) {
        Require.positive(coil + ".enteringTemperature", entering);
        Require.positive(coil + ".leavingTemperature", leaving);
        Require.positive(coil + ".volumeFlow", volumeFlow);
        Require.positive(coil + ".massFlow", massFlow);
        Require.positive(coil + ".totalHeat", totalHeat);
        if (volumeFlow.isPresent() && massFlow.isPresent()) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS, "Give the air as a volume flow or a mass flow, not both.")
                    .about(coil + ".massFlow");
        }
        if (volumeFlow.isPresent() && entering.isEmpty()) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "A volume flow of air needs the entering temperature, which sets its density.")
                    .about(coil + ".enteringTemperature");
        }
    }

    /** kg/m3 of dry air at the entering temperature: p / (R T). */
    OptionalDouble density(double atmosphere) {
        return Optionals.map(entering, temperature -> atmosphere / (Constants.DRY_AIR_GAS_CONSTANT * temperature));
    }

    /** kg/s, measured or from the volume flow and the density. */
    OptionalDouble massFlow(double atmosphere) {
        return Optionals.or(
                massFlow, Optionals.both(volumeFlow, density(atmosphere), (flow, density) -> flow * density));
    }

    /** Nothing measured. */
    public static AirStream none() {
        OptionalDouble none = OptionalDouble.empty();
        return new AirStream(none, none, none, none, none);
    }
}
