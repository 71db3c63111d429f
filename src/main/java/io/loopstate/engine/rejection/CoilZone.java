package io.loopstate.engine.rejection;

/**
 * A zone of a condenser: air unmixed across fins, refrigerant mixed inside its tube.
 *
 * <p>With the air's Gamma = 1 - exp(-UA / C_air) the refrigerant cools by P = 1 - exp(-Gamma C_air / C_refrigerant) of the
 * difference at its inlet (Kays and London, cross flow with one stream mixed, from memory). Both forms of the published relation,
 * for the smaller capacity on either side, are this one.
 *
 * @param kind what the refrigerant does
 * @param heat W
 * @param share of the coil's area
 * @param conductance W/K of the zone
 * @param refrigerantInlet K
 * @param refrigerantOutlet K
 * @param airInlet K
 * @param airOutlet K, mean of the air that passed the zone
 * @param effectiveness of the air: Gamma
 */
public record CoilZone(
        Kind kind,
        double heat,
        double share,
        double conductance,
        double refrigerantInlet,
        double refrigerantOutlet,
        double airInlet,
        double airOutlet,
        double effectiveness) {
    /** What the refrigerant does in a zone. */
    public enum Kind {
        DESUPERHEATING,
        CONDENSING,
        SUBCOOLING
    }

    /** Below this temperature change over the first difference, P is its own logarithm to rounding. */
    private static final double ISOTHERMAL = 1e-12;

    /** Least difference between refrigerant and air, K: where the refrigerant leaves the zone and the air too. */
    public double pinch() {
        return (1 - effectiveness) * (refrigerantOutlet - airInlet);
    }

    /**
     * Gamma C_air that a zone needs, W/K: what its air has to bring, were it heated all the way to the refrigerant. Infinite
     * where the refrigerant would have to leave no warmer than the air.
     *
     * @param heat W
     * @param inlet of the refrigerant, K
     * @param outlet of the refrigerant, K
     * @param air entering the zone, K
     */
    static double need(double heat, double inlet, double outlet, double air) {
        if (heat == 0) {
            return 0;
        }
        double difference = inlet - air;
        if (!(outlet > air && difference > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double p = (inlet - outlet) / difference;
        return Math.abs(p) < ISOTHERMAL ? heat / difference : heat / difference * (-Math.log1p(-p) / p);
    }
}
