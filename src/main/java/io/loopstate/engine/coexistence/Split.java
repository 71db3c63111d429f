package io.loopstate.engine.coexistence;

import io.loopstate.engine.eos.MolarState;

/**
 * A mixture divided into liquid and vapor.
 *
 * @param liquid the denser phase
 * @param vapor the other
 * @param pressure Pa
 * @param vaporFraction moles of vapor per mole of the whole
 * @param quality mass of vapor per mass of the whole
 * @param liquidAmounts of the components per volume of the liquid, mol/m3; not to be altered
 * @param vaporAmounts of the components per volume of the vapor, mol/m3; not to be altered
 */
public record Split(
        MolarState liquid,
        MolarState vapor,
        double pressure,
        double vaporFraction,
        double quality,
        double[] liquidAmounts,
        double[] vaporAmounts) {

    /** K. */
    public double temperature() {
        return liquid.temperature();
    }

    /** mol/m3. */
    public double density() {
        return 1 / mix(1 / liquid.density(), 1 / vapor.density());
    }

    /** A molar property of the whole from those of the phases. */
    public double mix(double ofLiquid, double ofVapor) {
        return ofLiquid + vaporFraction * (ofVapor - ofLiquid);
    }
}
