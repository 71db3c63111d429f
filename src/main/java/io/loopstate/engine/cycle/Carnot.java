package io.loopstate.engine.cycle;

import java.util.OptionalDouble;

/** The reversible machine between two temperatures. */
final class Carnot {
    private Carnot() {}

    /** Te / (Tc - Te), empty unless the warm side is the warmer one. Source: definition. */
    static OptionalDouble coefficient(double cold, double warm) {
        return warm > cold ? OptionalDouble.of(cold / (warm - cold)) : OptionalDouble.empty();
    }
}
