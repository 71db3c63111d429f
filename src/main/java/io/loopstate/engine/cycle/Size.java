package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Require;
import java.util.Objects;

/**
 * The one figure that fixes how large a machine is.
 *
 * @param given what is given
 * @param value W, kg/s or m3/s, above 0
 */
public record Size(Given given, double value) {
    /** What is given. */
    public enum Given {
        /** Heat taken up by the refrigerant in the evaporator, W. */
        REFRIGERATING_CAPACITY("refrigeratingCapacity"),
        /** Refrigerant, kg/s. */
        MASS_FLOW("massFlow"),
        /** Volume swept by the compressor, m3/s. */
        DISPLACEMENT("displacement");

        private final String input;

        Given(String input) {
            this.input = input;
        }
    }

    public Size {
        Objects.requireNonNull(given);
        Require.positive(given.input, value);
    }

    /** W. */
    public static Size refrigeratingCapacity(double watt) {
        return new Size(Given.REFRIGERATING_CAPACITY, watt);
    }

    /** kg/s. */
    public static Size massFlow(double value) {
        return new Size(Given.MASS_FLOW, value);
    }

    /** m3/s. */
    public static Size displacement(double value) {
        return new Size(Given.DISPLACEMENT, value);
    }
}
