package io.loopstate.engine.transport;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;

/**
 * Residual-entropy scaling: eta = eta_neufeld(T) (1 + C (exp(g) - 1)), x = rho s_r / (rho s_r)_c, g = w L(x) + (1 - w) V(x),
 * w = 1/(1 + exp(-100 (x - crossover))), L and V polynomials. Bell and Laesecke, 16th International Refrigeration and Air
 * Conditioning Conference at Purdue (2016).
 */
final class ResidualEntropyViscosity implements Viscosity {
    private static final double STEEPNESS = 100;

    private final DiluteGas dilute;
    private final double gasConstant;
    private final double criticalEntropyDensity;
    private final double c;
    private final PowerSum liquid;
    private final PowerSum vapor;
    private final double crossover;

    ResidualEntropyViscosity(JsonObject json, Fluid fluid) {
        dilute = DiluteGas.of(json, fluid);
        gasConstant = fluid.model().gasConstant();
        criticalEntropyDensity = json.number("criticalResidualEntropyDensity");
        c = json.number("C");
        liquid = PowerSum.polynomial(json.numbers("liquid"));
        vapor = PowerSum.polynomial(json.numbers("vapor"));
        crossover = json.number("crossover");
    }

    @Override
    public double at(Point point) {
        MolarState state = point.state();
        double x = state.density() * gasConstant * state.residualEntropy() / criticalEntropyDensity;
        double w = 1 / (1 + Math.exp(-STEEPNESS * (x - crossover)));
        double g = w * liquid.at(x) + (1 - w) * vapor.at(x);
        return dilute.at(state.temperature()) * (1 + c * Math.expm1(g));
    }
}
