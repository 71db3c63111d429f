package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.MolarState;

/** States at a temperature and a density: no iteration, only the question whether they lie inside the dome. */
final class TemperatureDensity {
    private TemperatureDensity() {}

    static Point solve(FluidModel fluid, double temperature, double density) {
        fluid.requireTemperature(temperature);
        if (temperature < fluid.topTemperature()) {
            Dome.Edges edges = fluid.dome().atTemperature(temperature);
            if (density <= edges.liquidDensity() && density >= edges.vaporDensity()) {
                return Saturated.between(
                        fluid, SplitVariable.TEMPERATURE, temperature, edges, SplitVariable.VOLUME, 1 / density);
            }
        }
        MolarState state = fluid.requireInRange(fluid.isotherm(temperature).state(density));
        boolean dense = density > fluid.fluid().criticalMolarDensity();
        return new Point.OnePhase(fluid.phase(temperature, state.pressure(), dense), state, state.pressure());
    }
}
