package io.loopstate.engine.component;

/**
 * Heat given off by the refrigerant in a condenser or gas cooler, J/kg, by what the refrigerant does there.
 *
 * @param desuperheating cooling of the vapor down to its dew point
 * @param condensing from vapor to liquid
 * @param subcooling cooling of the liquid below its bubble point
 * @param gasCooling cooling above the critical pressure, where nothing condenses
 */
public record HeatRejection(double desuperheating, double condensing, double subcooling, double gasCooling) {
    /** J/kg. */
    public double total() {
        return desuperheating + condensing + subcooling + gasCooling;
    }
}
