package io.loopstate.engine.coexistence;

import io.loopstate.engine.eos.MolarState;

/** A mixture divided into liquid, the denser phase, and vapor. */
public final class Split {
    private final Feed feed;
    private final MolarState liquid;
    private final MolarState vapor;
    private final double pressure;
    private final double vaporFraction;
    private final double quality;
    private final double[] liquidAmounts;
    private final double[] vaporAmounts;

    /** Amounts of the components per volume of each phase in mol/m3, not copied. */
    Split(
            Feed feed,
            MolarState liquid,
            MolarState vapor,
            double pressure,
            double vaporFraction,
            double quality,
            double[] liquidAmounts,
            double[] vaporAmounts) {
        this.feed = feed;
        this.liquid = liquid;
        this.vapor = vapor;
        this.pressure = pressure;
        this.vaporFraction = vaporFraction;
        this.quality = quality;
        this.liquidAmounts = liquidAmounts;
        this.vaporAmounts = vaporAmounts;
    }

    public MolarState liquid() {
        return liquid;
    }

    public MolarState vapor() {
        return vapor;
    }

    /** Pa. */
    public double pressure() {
        return pressure;
    }

    /** Moles of vapor per mole of the whole. */
    public double vaporFraction() {
        return vaporFraction;
    }

    /** Mass of vapor per mass of the whole. */
    public double quality() {
        return quality;
    }

    double[] liquidAmounts() {
        return liquidAmounts;
    }

    double[] vaporAmounts() {
        return vaporAmounts;
    }

    /** Whether the liquid does not divide further, by {@link TangentPlane}. */
    public boolean liquidStable() {
        return TangentPlane.stable(feed, temperature(), liquidAmounts);
    }

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
