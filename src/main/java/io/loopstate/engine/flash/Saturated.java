package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.property.Phase;

/** States on and inside the dome. */
final class Saturated {
    private Saturated() {}

    static MolarState liquid(FluidModel fluid, Dome.Edges edges) {
        return fluid.isotherm(edges.bubbleTemperature()).state(edges.liquidDensity());
    }

    static MolarState vapor(FluidModel fluid, Dome.Edges edges) {
        return fluid.isotherm(edges.dewTemperature()).state(edges.vaporDensity());
    }

    static Point bubble(FluidModel fluid, Dome.Edges edges) {
        // the bubble line of a blend runs on below the range, to the lowest pressure of the dew line
        fluid.requireTemperature(edges.bubbleTemperature());
        return new Point.OnePhase(Phase.LIQUID, liquid(fluid, edges), edges.bubblePressure(), 0);
    }

    static Point dew(FluidModel fluid, Dome.Edges edges) {
        return new Point.OnePhase(Phase.VAPOR, vapor(fluid, edges), edges.dewPressure(), 1);
    }

    /** A mixture of given quality; on the edges the saturated phase itself. */
    static Point atQuality(FluidModel fluid, SplitVariable fixed, double fixedValue, Dome.Edges edges, double quality) {
        if (quality == 0) {
            return bubble(fluid, edges);
        }
        if (quality == 1) {
            return dew(fluid, edges);
        }
        return between(fluid, fixed, fixedValue, edges, SplitVariable.QUALITY, quality);
    }

    /** A state inside the dome at a temperature or a pressure. */
    static Point between(
            FluidModel fluid,
            SplitVariable fixed,
            double fixedValue,
            Dome.Edges edges,
            SplitVariable second,
            double value) {
        Coexistence.Given at =
                new Coexistence.Given(fixed, fixedValue, edges, liquid(fluid, edges), vapor(fluid, edges));
        return fluid.coexistence().divide(fluid, at, second, value);
    }
}
