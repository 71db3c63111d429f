package io.loopstate.engine.transport;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.JsonObject;
import java.util.Optional;

/**
 * Friction theory: viscosity from the repulsive and attractive pressures of the equation of state, in bar. Quinones-Cisneros
 * and Deiters, J. Phys. Chem. B 110, 12820 (2006).
 *
 * <p>p_r = T (dp/dT)_rho, p_a = p - p_r, p_id = rho R T, dp_r = p_r - p_id;
 *
 * <p>eta_r = k_i p_id + k_a p_a + k_r dp_r + k_ii p_id^2 + k_aa p_a^2 + k_rr p_r^2 + k_drdr dp_r^2 + k_rrr p_r^3 + k_aaa
 * p_a^3, each k = (a0 + a1 psi1 + a2 psi2) tau^N, psi1 = exp(tau) - c1, psi2 = exp(tau^2) - c2.
 */
final class FrictionTheory implements ResidualViscosity {
    private static final double BAR = 1e5;

    private final double referenceTemperature;
    private final double c1;
    private final double c2;
    private final double gasConstant;
    private final Coefficient i;
    private final Coefficient a;
    private final Coefficient r;
    private final Coefficient ii;
    private final Coefficient aa;
    private final Coefficient rr;
    private final Coefficient drdr;
    private final Coefficient rrr;
    private final Coefficient aaa;

    FrictionTheory(JsonObject json, double gasConstant) {
        referenceTemperature = json.number("Tref");
        c1 = json.number("c1");
        c2 = json.number("c2");
        this.gasConstant = gasConstant;
        JsonObject k = json.object("k");
        i = Coefficient.of(k.optionalObject("i"));
        a = Coefficient.of(k.optionalObject("a"));
        r = Coefficient.of(k.optionalObject("r"));
        ii = Coefficient.of(k.optionalObject("ii"));
        aa = Coefficient.of(k.optionalObject("aa"));
        rr = Coefficient.of(k.optionalObject("rr"));
        drdr = Coefficient.of(k.optionalObject("drdr"));
        rrr = Coefficient.of(k.optionalObject("rrr"));
        aaa = Coefficient.of(k.optionalObject("aaa"));
    }

    private record Coefficient(double a0, double a1, double a2, double power) {
        /** Zero where the entry is absent. */
        static Coefficient of(Optional<JsonObject> entry) {
            if (entry.isEmpty()) {
                return new Coefficient(0, 0, 0, 0);
            }
            double[] a = entry.get().numbers("a");
            return new Coefficient(a[0], a[1], a[2], entry.get().number("N"));
        }

        double at(double tau, double psi1, double psi2) {
            return (a0 + a1 * psi1 + a2 * psi2) * Math.pow(tau, power);
        }
    }

    @Override
    public double at(MolarState state) {
        double tau = referenceTemperature / state.temperature();
        double psi1 = Math.exp(tau) - c1;
        double psi2 = Math.exp(tau * tau) - c2;
        double repulsive = state.temperature() * state.pressureByTemperature() / BAR;
        double attractive = state.pressure() / BAR - repulsive;
        double ideal = state.density() * gasConstant * state.temperature() / BAR;
        double excess = repulsive - ideal;
        return i.at(tau, psi1, psi2) * ideal
                + a.at(tau, psi1, psi2) * attractive
                + r.at(tau, psi1, psi2) * excess
                + ii.at(tau, psi1, psi2) * ideal * ideal
                + aa.at(tau, psi1, psi2) * attractive * attractive
                + rr.at(tau, psi1, psi2) * repulsive * repulsive
                + drdr.at(tau, psi1, psi2) * excess * excess
                + rrr.at(tau, psi1, psi2) * repulsive * repulsive * repulsive
                + aaa.at(tau, psi1, psi2) * attractive * attractive * attractive;
    }
}
