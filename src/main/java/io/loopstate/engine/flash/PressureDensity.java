package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.numerics.RootScan;
import io.loopstate.engine.numerics.Roots;
import java.util.List;

/**
 * States at a pressure and a density. In one phase the temperature is looked for between the dome and the end of the range,
 * every root of it, since the density of liquid water has a maximum.
 */
final class PressureDensity {
    private static final int CELLS = 24;
    /** Relative distance from the saturated liquid that is rounding. */
    private static final double ON_THE_EDGE = 1e-12;

    private PressureDensity() {}

    static List<Point> solve(FluidModel fluid, double pressure, double density) {
        fluid.requirePressure(pressure);
        double lower = fluid.minTemperature();
        double upper = fluid.maxTemperature();
        boolean dense = density > fluid.fluid().criticalMolarDensity();
        if (pressure < fluid.topPressure()) {
            if (fluid.hasSaturation(pressure)) {
                Dome.Edges edges = fluid.edgesAtPressure(pressure);
                if (density <= edges.liquidDensity() && density >= edges.vaporDensity()) {
                    return List.of(Saturated.between(
                            fluid, SplitVariable.PRESSURE, pressure, edges, SplitVariable.VOLUME, 1 / density));
                }
                dense = density > edges.liquidDensity();
                if (dense && density <= edges.liquidDensity() * (1 + ON_THE_EDGE)) {
                    return List.of(Saturated.bubble(fluid, edges));
                }
                lower = dense ? lower : edges.dewTemperature();
                upper = dense ? edges.bubbleTemperature() : upper;
                if (dense && !fluid.densityMaximum()) {
                    // below it the isochore lies inside the dome, where the equation may bend back
                    lower = Math.max(lower, IsochoreDome.temperature(fluid, density));
                }
            } else {
                lower = fluid.dome().thinVaporTemperature(pressure);
            }
        } else {
            lower = Math.max(lower, IsochoreDome.temperature(fluid, density));
        }
        boolean denserThanDome = dense;
        return RootScan.roots(
                        t -> {
                            MolarState s = fluid.isotherm(t).state(density);
                            return new Roots.ValueSlope(s.pressure() - pressure, s.pressureByTemperature());
                        },
                        RootScan.clustered(lower, upper, CELLS),
                        "temperature along the isochore")
                .stream()
                .map(t -> onePhase(fluid, t, density, pressure, denserThanDome))
                .toList();
    }

    private static Point onePhase(FluidModel fluid, double t, double density, double pressure, boolean dense) {
        Isotherm isotherm = fluid.isotherm(t);
        return new Point.OnePhase(fluid.phase(t, pressure, dense), isotherm.state(density), pressure);
    }
}
