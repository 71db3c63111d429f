package io.loopstate.engine.transport;

/** Reduced collision integral of viscosity for the Lennard-Jones (12-6) potential. */
final class CollisionIntegral {
    private CollisionIntegral() {}

    /**
     * Neufeld, Janzen and Aziz, J. Chem. Phys. 57, 1100 (1972), without its small periodic term.
     *
     * @param reducedTemperature T* = kT/epsilon
     */
    static double neufeld(double reducedTemperature) {
        return 1.16145 * Math.pow(reducedTemperature, -0.14874)
                + 0.52487 * Math.exp(-0.7732 * reducedTemperature)
                + 2.16178 * Math.exp(-2.43787 * reducedTemperature);
    }
}
