package io.loopstate.engine.compression;

import io.loopstate.engine.property.State;

/**
 * The path p v^n = constant. Its integrals are exact for every fluid, since they hold nothing but p and v. Source: any
 * textbook, e.g. R. Joel, Basic Engineering Thermodynamics, 5th edition, chapter 14 (from memory).
 */
final class IndexPath {
    /** Below this the formula for n = 1 is as good as the general one. */
    private static final double ISOTHERMAL = 1e-12;

    private IndexPath() {}

    /** The integral of v dp, J/kg: n/(n-1) p1 v1 (r^((n-1)/n) - 1), and p1 v1 ln r where n is 1. */
    static double flowWork(double pressure, double specificVolume, double ratio, double index) {
        double exponent = (index - 1) / index;
        double logarithm = Math.log(ratio);
        double factor = Math.abs(exponent) < ISOTHERMAL ? logarithm : Math.expm1(exponent * logarithm) / exponent;
        return pressure * specificVolume * factor;
    }

    /** The integral of -p dv, J/kg, of a closed system whose volume falls by a ratio v1 / v2. */
    static double closedWork(double pressure, double specificVolume, double volumeRatio, double index) {
        double exponent = index - 1;
        double logarithm = Math.log(volumeRatio);
        double factor = Math.abs(exponent) < ISOTHERMAL ? logarithm : Math.expm1(exponent * logarithm) / exponent;
        return pressure * specificVolume * factor;
    }

    /** The n of the path through two states. */
    static double between(State inlet, State outlet) {
        return Math.log(outlet.pressure() / inlet.pressure())
                / Math.log(inlet.specificVolume() / outlet.specificVolume());
    }
}
