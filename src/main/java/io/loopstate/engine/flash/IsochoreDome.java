package io.loopstate.engine.flash;

import io.loopstate.engine.numerics.Roots;

/** Where an isochore leaves the dome. */
final class IsochoreDome {
    private static final double TOLERANCE = 1e-15;
    /** Share of the highest temperature below which the saturation line is asked; the rest is the top of the dome. */
    private static final double TOP = 1 - 1e-13;

    private IsochoreDome() {}

    /**
     * Temperature (K) at which a density (mol/m3) is that of the saturated liquid or vapor; the lowest temperature where it
     * lies outside the dome at all temperatures.
     */
    static double temperature(FluidModel fluid, double density) {
        double tMin = fluid.minTemperature();
        double top = fluid.topTemperature() * TOP;
        Dome.Edges lowest = fluid.dome().atTemperature(tMin);
        if (density >= lowest.liquidDensity() || density <= lowest.vaporDensity()) {
            return tMin;
        }
        Dome.Edges highest = fluid.dome().atTemperature(top);
        if (density <= highest.liquidDensity() && density >= highest.vaporDensity()) {
            return top;
        }
        boolean liquid = density > highest.liquidDensity();
        return Roots.brent(
                t -> {
                    Dome.Edges edges = fluid.dome().atTemperature(t);
                    return Math.log((liquid ? edges.liquidDensity() : edges.vaporDensity()) / density);
                },
                tMin,
                top,
                TOLERANCE,
                "saturation temperature of a density");
    }
}
