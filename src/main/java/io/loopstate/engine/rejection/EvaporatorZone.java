package io.loopstate.engine.rejection;

/**
 * A zone of an evaporator: air unmixed across fins, refrigerant mixed inside its tube, side by side with the other zone.
 *
 * @param kind what the refrigerant does
 * @param heat W, latent heat of the air included
 * @param share of the coil's area, and of the air
 * @param conductance W/K of the zone, dry
 * @param refrigerantInlet K
 * @param refrigerantOutlet K
 * @param effectiveness of the air: Gamma = 1 - exp(-UA / C_air); one less it is the bypass factor
 */
public record EvaporatorZone(
        Kind kind,
        double heat,
        double share,
        double conductance,
        double refrigerantInlet,
        double refrigerantOutlet,
        double effectiveness) {
    /** What the refrigerant does in a zone. */
    public enum Kind {
        BOILING,
        SUPERHEATING
    }

    /** Least difference between air and refrigerant, K: where both leave the zone. */
    public double pinch(double entering) {
        return (1 - effectiveness) * (entering - refrigerantOutlet);
    }
}
