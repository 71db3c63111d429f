package io.loopstate.engine.cycle;

import io.loopstate.engine.flash.Saturation;

/**
 * The temperatures at which a refrigerant evaporates or condenses at one pressure.
 *
 * @param pressure Pa
 * @param bubble K
 * @param midpoint K, half way between the two others
 * @param dew K
 */
public record SaturationTemperatures(double pressure, double bubble, double midpoint, double dew) {
    /** Those of a saturation at one pressure (Pa). */
    public static SaturationTemperatures of(double pressure, Saturation saturation) {
        double bubble = saturation.bubble().temperature();
        double dew = saturation.dew().temperature();
        return new SaturationTemperatures(pressure, bubble, (bubble + dew) / 2, dew);
    }

    /** K between bubble and dew point. */
    public double glide() {
        return dew - bubble;
    }
}
