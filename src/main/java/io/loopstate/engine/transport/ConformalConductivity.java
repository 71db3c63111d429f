package io.loopstate.engine.transport;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;
import java.util.Optional;

/**
 * Extended corresponding states: lambda = l0 + F lambda_ref(T0, rho0 psi) + critical, lambda_ref the residual part of the
 * reference fluid, F = (T/T0)^(1/2) (rho0/rho)^(-2/3) (M_ref/M)^(1/2), psi = sum n (rho/rhoRef)^t;
 *
 * <p>l0 = 15/4 eta_d R/M + fint eta_d (cp0 - 5/2 R)/M with fint = sum n (T/Tref)^t, eta_d the dilute viscosity. McLinden,
 * Klein and Perkins, Int. J. Refrig. 23, 43 (2000).
 */
final class ConformalConductivity implements ThermalConductivity {
    /** The data hold fint for cp0 in J/(mol K) over a molar mass in g/mol. */
    private static final double GRAM_PER_KILOGRAM = 1000;

    private final DiluteGas dilute;
    private final double molarMass;
    private final double gasConstant;
    private final double internalReference;
    private final PowerSum internal;
    private final ResidualConductivity reference;
    private final ShapeFactor psi;
    private final double massFactor;
    private final Optional<CriticalEnhancement> critical;

    ConformalConductivity(JsonObject json, Fluid fluid, Fluid referenceFluid, ResidualConductivity reference) {
        dilute = DiluteGas.of(json, fluid);
        molarMass = fluid.molarMass();
        gasConstant = fluid.model().gasConstant();
        JsonObject fInt = json.object("fInt");
        internalReference = fInt.number("Tref");
        internal = PowerSum.of(fInt);
        this.reference = reference;
        psi = ShapeFactor.of(json.object("psi"));
        massFactor = Math.sqrt(referenceFluid.molarMass() / molarMass);
        critical = json.optionalObject("critical").map(c -> new CriticalEnhancement(c, fluid.model()));
    }

    @Override
    public double at(Point point, double viscosity) {
        MolarState state = point.state();
        ConformalState other = point.conformal().orElseThrow();
        double scale = massFactor * other.scale(state.temperature(), state.density());
        double dense = scale * reference.at(other.temperature(), other.density() * psi.at(state.density()));
        double background = gas(state) + dense;
        return critical.isPresent() ? background + critical.get().at(state, viscosity) : background;
    }

    private double gas(MolarState state) {
        double temperature = state.temperature();
        double share = GRAM_PER_KILOGRAM * internal.at(temperature / internalReference);
        double internalCapacity = state.idealIsobaricHeatCapacity() - 2.5 * gasConstant;
        return dilute.at(temperature) / molarMass * (3.75 * gasConstant + share * internalCapacity);
    }
}
