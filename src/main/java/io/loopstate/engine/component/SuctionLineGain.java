package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.Objects;

/**
 * Heat taken up by the vapor on its way from the evaporator to the compressor.
 *
 * @param given how it is stated
 * @param value J/kg, K or K
 */
public record SuctionLineGain(Given given, double value) {
    /** How the gain is stated. */
    public enum Given {
        /** J/kg; negative if heat is lost. */
        HEAT,
        /** K by which the vapor arrives warmer than it left the evaporator. */
        TEMPERATURE_RISE,
        /** K at the compressor inlet (return gas temperature). */
        COMPRESSOR_INLET_TEMPERATURE
    }

    public SuctionLineGain {
        Objects.requireNonNull(given);
        if (!Double.isFinite(value) || given == Given.COMPRESSOR_INLET_TEMPERATURE && value <= 0) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "The value is not a number, or an absolute temperature not above zero.",
                    given == Given.COMPRESSOR_INLET_TEMPERATURE ? "compressorInletTemperature" : "suctionLineGain",
                    value,
                    Double.NaN,
                    Double.NaN);
        }
    }

    /** An adiabatic line. */
    public static SuctionLineGain none() {
        return heat(0);
    }

    /** J/kg. */
    public static SuctionLineGain heat(double value) {
        return new SuctionLineGain(Given.HEAT, value);
    }

    /** K. */
    public static SuctionLineGain temperatureRise(double kelvin) {
        return new SuctionLineGain(Given.TEMPERATURE_RISE, kelvin);
    }

    /** K. */
    public static SuctionLineGain compressorInletTemperature(double kelvin) {
        return new SuctionLineGain(Given.COMPRESSOR_INLET_TEMPERATURE, kelvin);
    }
}
