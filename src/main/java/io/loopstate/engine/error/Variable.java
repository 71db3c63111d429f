package io.loopstate.engine.error;

import java.util.Locale;

/** A thermodynamic variable that an input or an error is about. All values are SI, per kilogram where specific. */
public enum Variable {
    /** K. */
    TEMPERATURE,
    /** Pa, absolute. */
    PRESSURE,
    /** kg/m3. */
    DENSITY,
    /** m3/kg. */
    SPECIFIC_VOLUME,
    /** J/kg. */
    SPECIFIC_ENTHALPY,
    /** J/(kg K). */
    SPECIFIC_ENTROPY,
    /** J/kg. */
    SPECIFIC_INTERNAL_ENERGY,
    /** Mass of vapor per mass of mixture, 0 to 1. */
    VAPOR_QUALITY,
    /** K above the dew point at the same pressure. */
    SUPERHEAT,
    /** K below the bubble point at the same pressure. */
    SUBCOOLING;

    /** The name in words. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
