package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import java.util.Objects;

/**
 * An evaporating or condensing level as it is stated: by pressure, or by a temperature of the boiling refrigerant.
 *
 * @param given {@code TEMPERATURE} or {@code PRESSURE}
 * @param value K or Pa (absolute)
 * @param basis which saturation temperature is meant; without effect for a pressure
 */
public record SaturationLevel(Variable given, double value, SaturationBasis basis) {
    public SaturationLevel {
        Objects.requireNonNull(basis);
        if (given != Variable.TEMPERATURE && given != Variable.PRESSURE) {
            throw new IllegalArgumentException("a level is given by temperature or pressure, not " + given);
        }
        if (!(value > 0) || Double.isInfinite(value)) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "An absolute " + (given == Variable.PRESSURE ? "pressure" : "temperature") + " is above zero.",
                    given,
                    value,
                    0,
                    Double.NaN);
        }
    }

    /** A dew-point temperature, K. */
    public static SaturationLevel temperature(double kelvin) {
        return new SaturationLevel(Variable.TEMPERATURE, kelvin, SaturationBasis.DEW);
    }

    /** A saturation temperature, K. */
    public static SaturationLevel temperature(double kelvin, SaturationBasis basis) {
        return new SaturationLevel(Variable.TEMPERATURE, kelvin, basis);
    }

    /** A pressure, Pa absolute. */
    public static SaturationLevel pressure(double pascal) {
        return new SaturationLevel(Variable.PRESSURE, pascal, SaturationBasis.DEW);
    }

    /**
     * The pressure of this level, Pa.
     *
     * @throws EngineException where a temperature lies outside the saturation line, or depends on what enters an evaporator,
     *     {@link EvaporatorMean}
     */
    public double pressure(Equilibrium equilibrium) {
        if (given == Variable.PRESSURE) {
            return value;
        }
        Saturation saturation = equilibrium.saturationAtTemperature(value);
        return switch (basis) {
            case DEW -> saturation.dew().pressure();
            case BUBBLE -> saturation.bubble().pressure();
            case MIDPOINT -> MidpointPressure.at(equilibrium, value, saturation);
            case INLET_TO_DEW ->
                throw EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "A mean from the inlet to the dew point is that of an evaporator whose valve inlet is known.");
        };
    }
}
