package io.loopstate.engine.component;

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
        HEAT("suctionLineHeatGain"),
        /** K by which the vapor arrives warmer than it left the evaporator. */
        TEMPERATURE_RISE("suctionLineTemperatureRise"),
        /** K at the compressor inlet (return gas temperature). */
        COMPRESSOR_INLET_TEMPERATURE("compressorInletTemperature");

        private final String input;

        Given(String input) {
            this.input = input;
        }

        /** Name of the input, as errors name it. */
        public String input() {
            return input;
        }
    }

    public SuctionLineGain {
        Objects.requireNonNull(given);
        if (given == Given.COMPRESSOR_INLET_TEMPERATURE) {
            Require.positive(given.input(), value);
        } else {
            Require.finite(given.input(), value);
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
