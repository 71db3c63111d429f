package io.loopstate.engine.cycle;

import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A state at a place in the loop.
 *
 * @param name the place
 * @param state the state there
 * @param superheat K above the dew point at the point's own pressure; only for vapor below the critical pressure
 * @param subcooling K below the bubble point at the point's own pressure; only for liquid below the critical pressure
 */
public record Point(PointName name, State state, OptionalDouble superheat, OptionalDouble subcooling) {
    public Point {
        Objects.requireNonNull(name);
        Objects.requireNonNull(state);
        Objects.requireNonNull(superheat);
        Objects.requireNonNull(subcooling);
    }

    /** A state with its distances from saturation. */
    public static Point of(PointName name, Equilibrium equilibrium, State state) {
        return new Point(
                name,
                state,
                SaturationMargin.superheat(equilibrium, state),
                SaturationMargin.subcooling(equilibrium, state));
    }
}
