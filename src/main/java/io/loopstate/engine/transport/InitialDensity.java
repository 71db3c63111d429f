package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.JsonObject;

/**
 * Second viscosity virial coefficient, B = N_A sigma^3 sum b T*^t: how the viscosity of a gas starts to change with density.
 * Rainwater and Friend, Phys. Rev. A 36, 4062 (1987), in the form of Vogel et al. (1998).
 */
final class InitialDensity {
    private static final double AVOGADRO = 6.02214076e23;

    private final double volume;
    private final double epsilonOverK;
    private final PowerSum reduced;

    InitialDensity(JsonObject json) {
        if (!json.text("form").equals("rainwater-friend")) {
            throw new IllegalArgumentException("unknown initial density dependence " + json.text("form"));
        }
        double sigma = json.number("sigma") * 1e-9;
        volume = AVOGADRO * sigma * sigma * sigma;
        epsilonOverK = json.number("epsilonOverK");
        reduced = new PowerSum(json.numbers("b"), json.numbers("t"));
    }

    /** m3/mol at a temperature in K. */
    double at(double temperature) {
        return volume * reduced.at(temperature / epsilonOverK);
    }
}
