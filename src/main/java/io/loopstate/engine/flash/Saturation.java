package io.loopstate.engine.flash;

import io.loopstate.engine.property.State;

/**
 * Both sides of the dome: at a given temperature each has its own pressure, at a given pressure its own temperature. For
 * a pure fluid the two are the same.
 *
 * @param bubble saturated liquid (quality 0)
 * @param dew saturated vapor (quality 1)
 */
public record Saturation(State bubble, State dew) {
    /** Dew less bubble temperature, K: the glide at a given pressure. */
    public double temperatureGlide() {
        return dew.temperature() - bubble.temperature();
    }

    /** Bubble less dew pressure, Pa: the glide at a given temperature. */
    public double pressureGlide() {
        return bubble.pressure() - dew.pressure();
    }

    /** J/kg. */
    public double latentHeat() {
        return dew.specificEnthalpy() - bubble.specificEnthalpy();
    }
}
