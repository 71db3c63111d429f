package io.loopstate.engine.coexistence;

/**
 * A state of the overall composition on the edge of the two-phase region, with the phase that is about to form.
 *
 * @param temperature K
 * @param pressure Pa
 * @param density of the overall composition, mol/m3
 * @param incipient amounts of the components per volume of the phase that forms, mol/m3; not to be altered
 */
public record BoundaryPoint(double temperature, double pressure, double density, double[] incipient) {

    /** Density of the phase that forms, mol/m3. */
    public double incipientDensity() {
        double sum = 0;
        for (double amount : incipient) {
            sum += amount;
        }
        return sum;
    }

    /** Mole fraction of a component in the phase that forms. */
    public double incipientFraction(int i) {
        return incipient[i] / incipientDensity();
    }

    /** Whether the overall composition is the denser of the two phases, so that bubbles form. */
    public boolean bubble() {
        return density > incipientDensity();
    }
}
