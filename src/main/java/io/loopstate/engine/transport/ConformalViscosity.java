package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;

/**
 * Extended corresponding states: eta = f0 eta_neufeld(T) + F eta_ref(T0, rho0 psi), eta_ref less its dilute part, F =
 * (T/T0)^(1/2) (rho0/rho)^(-2/3) (M/M_ref)^(1/2), psi = sum n (rho/rhoRef)^t. Klein, McLinden and Laesecke, Int. J. Refrig.
 * 20, 208 (1997); Huber, Laesecke and Perkins, Ind. Eng. Chem. Res. 42, 3163 (2003).
 */
final class ConformalViscosity implements Viscosity {
    private final DiluteGas dilute;
    private final SumViscosity reference;
    private final ResidualViscosity.Explicit residual;
    private final ShapeFactor psi;
    private final double massFactor;

    ConformalViscosity(JsonObject json, Fluid fluid, Fluid referenceFluid, SumViscosity reference) {
        dilute = DiluteGas.of(json, fluid);
        this.reference = reference;
        if (!(reference.residual() instanceof ResidualViscosity.Explicit explicit)) {
            throw new IllegalArgumentException(
                    "the viscosity of " + referenceFluid.designation() + " cannot serve as a reference");
        }
        residual = explicit;
        psi = ShapeFactor.of(json.object("psi"));
        massFactor = Math.sqrt(fluid.molarMass() / referenceFluid.molarMass());
    }

    @Override
    public double at(Point point) {
        double temperature = point.state().temperature();
        double density = point.state().density();
        ConformalState other = point.conformal().orElseThrow();
        double scale = massFactor * other.scale(temperature, density);
        double excess = reference.excess(residual, other.temperature(), other.density() * psi.at(density));
        return dilute.at(temperature) + scale * excess;
    }
}
