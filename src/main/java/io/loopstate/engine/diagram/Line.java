package io.loopstate.engine.diagram;

import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Objects;

/**
 * A line of a diagram without a gap.
 *
 * @param kind what stays the same along it
 * @param value of that, SI: K, J/(kg K), kg/kg or Pa; NaN for the edges of the dome
 * @param states along it, at least two; the first and the last may lie outside the window
 */
public record Line(Kind kind, double value, List<State> states) {
    public Line {
        Objects.requireNonNull(kind);
        states = List.copyOf(states);
    }

    /** What stays the same along a line. */
    public enum Kind {
        /** Saturated liquid, from cold to the critical point; where the model has no state there, to the top of the dew line. */
        BUBBLE,
        /** Saturated vapor, from cold to the critical point or as close as the model goes. */
        DEW,
        ISOTHERM,
        ISENTROPE,
        ISOBAR,
        QUALITY
    }
}
