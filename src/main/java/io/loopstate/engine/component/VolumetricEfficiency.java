package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;

/** How much of its displacement a reciprocating compressor draws in. */
public final class VolumetricEfficiency {
    private VolumetricEfficiency() {}

    /**
     * Clearance volumetric efficiency 1 + C - C (p2/p1)^(1/n). Source: R. Joel, Basic Engineering Thermodynamics, 5th
     * edition, chapter 14 (from memory). Valve losses, leakage and heating of the vapor are not in it.
     *
     * @param clearance clearance volume over swept volume, 0 or more
     * @param pressureRatio absolute, 1 or more
     * @param expansionIndex index n of the re-expanding clearance vapor, above 0
     * @throws EngineException {@code IMPOSSIBLE_VALUE} for values outside those ranges, {@code CONTRADICTORY_INPUTS} if the
     *     clearance vapor fills the cylinder, so that nothing is drawn in
     */
    public static double ofClearance(double clearance, double pressureRatio, double expansionIndex) {
        Require.notNegative("clearance", clearance);
        Require.positive("expansionIndex", expansionIndex);
        if (!(pressureRatio >= 1) || Double.isInfinite(pressureRatio)) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "A compressor raises the pressure: the ratio is 1 or more.",
                    "pressureRatio",
                    pressureRatio,
                    1,
                    Double.NaN);
        }
        double efficiency = 1 + clearance - clearance * Math.pow(pressureRatio, 1 / expansionIndex);
        if (!(efficiency > 0)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "At this pressure ratio the vapor left in the clearance fills the whole cylinder: nothing is drawn in.",
                    "pressureRatio",
                    pressureRatio,
                    1,
                    Math.pow((1 + clearance) / clearance, expansionIndex));
        }
        return efficiency;
    }
}
