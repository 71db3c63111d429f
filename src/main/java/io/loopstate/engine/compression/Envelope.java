package io.loopstate.engine.compression;

/**
 * Dew temperatures that a rating map holds for, K; infinite where there is no limit.
 *
 * @param minSuction K
 * @param maxSuction K
 * @param minDischarge K
 * @param maxDischarge K
 */
public record Envelope(double minSuction, double maxSuction, double minDischarge, double maxDischarge) {
    /** Without limits. */
    public static Envelope unlimited() {
        return new Envelope(
                Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** Whether a dew temperature at the suction (K) lies inside. */
    public boolean holdsSuction(double kelvin) {
        return kelvin >= minSuction - SLACK && kelvin <= maxSuction + SLACK;
    }

    /** Whether a dew temperature at the discharge (K) lies inside. */
    public boolean holdsDischarge(double kelvin) {
        return kelvin >= minDischarge - SLACK && kelvin <= maxDischarge + SLACK;
    }

    /** Rounding of a unit or of a pressure. */
    private static final double SLACK = 1e-6;
}
