package io.loopstate.engine.transport;

/**
 * The state of a reference fluid that corresponds to a state of another.
 *
 * @param temperature K
 * @param density mol/m3
 */
record ConformalState(double temperature, double density) {

    /** (T/T0)^(1/2) (rho0/rho)^(-2/3), the scale of a transport property but for the molar masses. */
    double scale(double fluidTemperature, double fluidDensity) {
        double densityRoot = Math.cbrt(fluidDensity / density);
        return Math.sqrt(fluidTemperature / temperature) * densityRoot * densityRoot;
    }
}
