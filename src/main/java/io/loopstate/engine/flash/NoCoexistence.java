package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;

/** A pseudo-pure fluid, which knows nothing of the phases inside its dome. */
final class NoCoexistence implements Coexistence {
    @Override
    public Point divide(FluidModel fluid, Given line, SplitVariable second, double value) {
        if (second == SplitVariable.QUALITY && (value == 0 || value == 1)) {
            return value == 0 ? Saturated.bubble(fluid, line.edges()) : Saturated.dew(fluid, line.edges());
        }
        throw EngineException.of(
                ErrorCode.TWO_PHASE_UNDEFINED,
                fluid.fluid().designation()
                        + " is modeled as one substance, without states between its bubble and dew line");
    }
}
