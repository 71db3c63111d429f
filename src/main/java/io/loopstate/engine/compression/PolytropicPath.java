package io.loopstate.engine.compression;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.numerics.DormandPrince;
import io.loopstate.engine.property.State;
import java.util.OptionalDouble;

/**
 * Compression along which each small rise of pressure has the same efficiency: dh = k v dp with the real specific volume, where
 * k = (1 - heat loss share) / polytropic efficiency. The equation is integrated over ln p, dh/d(ln p) = k p v(p, h), to 1e-11;
 * it needs none of the corrections that closed formulas make for a gas that is not ideal.
 *
 * <p>Sources: J. M. Schultz, J. Eng. Power 84 (1962) 69-82, equation 1, for the definition; R. A. Huntington, J. Eng. Gas
 * Turbines Power 107 (1985) 872-876, for the integration in small stages (both from memory).
 */
final class PolytropicPath {
    private static final double TOLERANCE = 1e-11;
    private static final double ROOT_TOLERANCE = 2e-11;
    private static final int MAX_ITERATIONS = 40;

    private PolytropicPath() {}

    /**
     * Rise of the enthalpy, J/kg.
     *
     * @param outletPressure Pa
     * @param share k above
     */
    static double enthalpyRise(Equilibrium equilibrium, State inlet, double outletPressure, double share) {
        double start = Math.log(inlet.pressure());
        double end = Math.log(outletPressure);
        double scale = share * inlet.pressure() * inlet.specificVolume() * Math.abs(end - start);
        return DormandPrince.integrate(
                (x, rise) -> {
                    double pressure = Math.exp(x);
                    State state = equilibrium.atPressureEnthalpy(pressure, inlet.specificEnthalpy() + rise);
                    return share * pressure * state.specificVolume();
                },
                start,
                0,
                end,
                TOLERANCE * scale,
                "polytropic path");
    }

    /** The state at the end. */
    static State end(Equilibrium equilibrium, State inlet, double outletPressure, double share) {
        double rise = enthalpyRise(equilibrium, inlet, outletPressure, share);
        return equilibrium.atPressureEnthalpy(outletPressure, inlet.specificEnthalpy() + rise);
    }

    /**
     * The share k of the path between two states: the integral of v dp is the rise of the enthalpy over k. Empty where the
     * enthalpy does not rise, since no path of this kind leads there.
     *
     * @param isentropicRise J/kg to the outlet's pressure at constant entropy, for the start
     */
    static OptionalDouble share(Equilibrium equilibrium, State inlet, State outlet, double isentropicRise) {
        double target = outlet.specificEnthalpy() - inlet.specificEnthalpy();
        if (!(target > 0)) {
            return OptionalDouble.empty();
        }
        // The enthalpy rises nearly in proportion to k: the ratio of the rises is a start good to a few per cent, and
        // the
        // secant through two such starts converges in a few steps.
        double previous = target / isentropicRise;
        double miss = enthalpyRise(equilibrium, inlet, outlet.pressure(), previous) - target;
        double share = previous * target / (target + miss);
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            if (Math.abs(miss) <= ROOT_TOLERANCE * target) {
                return OptionalDouble.of(previous);
            }
            double next = enthalpyRise(equilibrium, inlet, outlet.pressure(), share) - target;
            double step = next == miss ? 0 : next * (share - previous) / (next - miss);
            previous = share;
            miss = next;
            if (Math.abs(step) <= ROOT_TOLERANCE * share) {
                return OptionalDouble.of(share);
            }
            share = Math.max(share - step, share / 2);
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, "polytropic efficiency");
    }
}
