package io.loopstate.engine.coexistence;

import io.loopstate.engine.error.EngineException;

/** Where between bubble and dew line the model divides the liquid in two. */
final class SecondLiquid {
    private static final int TEMPERATURES = 24;
    private static final int MARGIN = 4;
    private static final double HIGHEST = 0.9;
    private static final double[] FRACTIONS = {0, 0.2, 0.5, 0.8, 1};

    private SecondLiquid() {}

    /** Temperature (K) above which the liquid was stable wherever it was looked at; the lowest one where it always was. */
    static double highestTemperature(PhaseBoundary boundary) {
        double lower = boundary.minTemperature();
        double upper = Math.max(lower, HIGHEST * boundary.critical().temperature());
        double step = (upper - lower) / TEMPERATURES;
        for (int k = TEMPERATURES; k >= 0; k--) {
            double t = lower + k * step;
            for (double fraction : FRACTIONS) {
                if (!stable(boundary, t, fraction)) {
                    // some steps more, since false solutions reach beyond the region
                    return Math.min(t + MARGIN * step, upper);
                }
            }
        }
        return lower;
    }

    private static boolean stable(PhaseBoundary boundary, double t, double fraction) {
        if (fraction == 0) {
            return TangentPlane.stable(
                    boundary.feed(), t, boundary.atTemperature(t, true).density());
        }
        if (fraction == 1) {
            return TangentPlane.stable(
                    boundary.feed(), t, boundary.atTemperature(t, false).incipient());
        }
        try {
            Split split = new MixtureSplit(boundary)
                    .at(SplitVariable.TEMPERATURE, t, SplitVariable.VAPOR_FRACTION, fraction, fraction);
            return split.liquidStable();
        } catch (EngineException e) {
            // a division that cannot be followed is as doubtful
            return false;
        }
    }
}
