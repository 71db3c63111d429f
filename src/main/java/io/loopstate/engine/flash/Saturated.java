package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
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
        return new Point.OnePhase(Phase.LIQUID, liquid(fluid, edges), edges.bubblePressure(), 0);
    }

    static Point dew(FluidModel fluid, Dome.Edges edges) {
        return new Point.OnePhase(Phase.VAPOR, vapor(fluid, edges), edges.dewPressure(), 1);
    }

    /** A mixture of given quality; on the edges the saturated phase itself. */
    static Point atQuality(FluidModel fluid, Dome.Edges edges, double quality) {
        if (quality == 0) {
            return bubble(fluid, edges);
        }
        if (quality == 1) {
            return dew(fluid, edges);
        }
        requireCoexisting(fluid);
        return new Point.TwoPhase(liquid(fluid, edges), vapor(fluid, edges), edges.dewPressure(), quality);
    }

    static void requireCoexisting(FluidModel fluid) {
        if (!fluid.dome().coexisting()) {
            throw undefined(fluid);
        }
    }

    static EngineException undefined(FluidModel fluid) {
        return EngineException.of(
                ErrorCode.TWO_PHASE_UNDEFINED,
                fluid.fluid().designation()
                        + " is modeled as one substance, without states between its bubble and dew line");
    }
}
