package io.loopstate.engine.compression;

import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.Objects;

/**
 * The vapor at the suction of a compressor as it is stated.
 *
 * @param level pressure or dew-point temperature
 * @param given {@code TEMPERATURE} (K), {@code SUPERHEAT} (K, 0 or more) or {@code VAPOR_QUALITY} (0 to 1)
 * @param value of that variable
 */
public record SuctionCondition(SaturationLevel level, Variable given, double value) {
    public SuctionCondition {
        Objects.requireNonNull(level);
        if (given != Variable.TEMPERATURE && given != Variable.SUPERHEAT && given != Variable.VAPOR_QUALITY) {
            throw new IllegalArgumentException("a suction is given by temperature, superheat or quality, not " + given);
        }
    }

    /**
     * The state.
     *
     * @throws EngineException about the input {@code suction}; {@code CONTRADICTORY_INPUTS} for a liquid, which no
     *     compressor compresses
     */
    public State state(Equilibrium equilibrium) {
        return Inputs.trace("suction", () -> {
            State state = equilibrium.state(Variable.PRESSURE, level.pressure(equilibrium), given, value);
            boolean liquid = state.phase() == Phase.LIQUID || state.saturated() && state.vaporQuality() == 0;
            if (liquid) {
                throw EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "The suction holds nothing but liquid, which a compressor cannot compress.",
                        given,
                        value,
                        lowest(equilibrium, state.pressure()),
                        Double.NaN);
            }
            return state;
        });
    }

    private double lowest(Equilibrium equilibrium, double pressure) {
        boolean temperature = given == Variable.TEMPERATURE
                && pressure < equilibrium.refrigerant().criticalPoint().pressure();
        return temperature ? equilibrium.saturationAtPressure(pressure).dew().temperature() : Double.NaN;
    }
}
