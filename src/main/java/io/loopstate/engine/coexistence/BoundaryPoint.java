package io.loopstate.engine.coexistence;

/** A state of the overall composition on the edge of the two-phase region, with the phase that is about to form. */
public final class BoundaryPoint {
    private final double temperature;
    private final double pressure;
    private final double density;
    private final double[] incipient;

    /** @param incipient amounts of the components per volume of the phase that forms, mol/m3; not copied */
    BoundaryPoint(double temperature, double pressure, double density, double[] incipient) {
        this.temperature = temperature;
        this.pressure = pressure;
        this.density = density;
        this.incipient = incipient;
    }

    /** K. */
    public double temperature() {
        return temperature;
    }

    /** Pa. */
    public double pressure() {
        return pressure;
    }

    /** Of the overall composition, mol/m3. */
    public double density() {
        return density;
    }

    double[] incipient() {
        return incipient;
    }

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

    /** How different both phases are, by their densities. */
    double contrast() {
        return Math.abs(Math.log(density / incipientDensity()));
    }

    /** Whether the overall composition is the denser of the two phases, so that bubbles form. */
    public boolean bubble() {
        return density > incipientDensity();
    }
}
