package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;

/** How a state inside the dome is made of phases. */
interface Coexistence {
    /** Closest approach to the critical temperature on an edge of the dome, as a share of it. */
    double CLOSEST = 1e-12;

    /**
     * A line through the dome.
     *
     * @param fixed TEMPERATURE or PRESSURE
     * @param value of it, K or Pa
     * @param edges of the dome there
     * @param liquid state of the whole on the dense edge
     * @param vapor state of the whole on the thin edge
     */
    record Given(SplitVariable fixed, double value, Dome.Edges edges, MolarState liquid, MolarState vapor) {}

    /** The state on a line through the dome at which a molar property of the whole has a value. */
    Point divide(FluidModel fluid, Given line, SplitVariable second, double value);

    /** How close to the critical temperature, as a share of it, liquid and vapor can be told apart. */
    default double closestToCritical() {
        return CLOSEST;
    }

    /** The answer to a temperature and a pressure that lie on the edge of the dome, where one composition has no answer. */
    default Point onLine(FluidModel fluid, double pressure, Dome.Edges edges, boolean bubble) {
        throw EngineException.of(
                ErrorCode.ON_SATURATION_LINE,
                "on the saturation line, where pressure and temperature do not fix the vapor quality",
                Variable.PRESSURE,
                pressure,
                edges.dewPressure(),
                edges.bubblePressure());
    }

    /** The same with enthalpy (J/mol) and entropy (J/(mol K)) counted from another datum. */
    default Coexistence shifted(double enthalpy, double entropy) {
        return this;
    }

    /** Refuses a state of one phase that is no stable phase. */
    default void requireStable(FluidModel fluid, Point.OnePhase point) {}
}
