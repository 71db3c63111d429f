package io.loopstate.engine.rejection;

import java.util.OptionalDouble;

/** The logarithmic mean of the temperature differences at both ends of a heat exchanger. */
public final class LogMean {
    /** Below this relative distance of both the series is exact to rounding. */
    private static final double CLOSE = 1e-5;

    private LogMean() {}

    /** K; empty unless both differences are above zero. Source: definition, for constant conductance. */
    public static OptionalDouble of(double first, double second) {
        if (!(first > 0 && second > 0)) {
            return OptionalDouble.empty();
        }
        double x = (first - second) / second;
        return OptionalDouble.of(
                Math.abs(x) < CLOSE ? second * (1 + x / 2 - x * x / 12) : (first - second) / Math.log1p(x));
    }
}
