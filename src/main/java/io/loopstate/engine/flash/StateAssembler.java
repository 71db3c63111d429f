package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;

/** From what a flash found to the state that leaves the engine: per kilogram, with every derived property. */
final class StateAssembler {
    private StateAssembler() {}

    static State state(FluidModel fluid, Point point) {
        return point instanceof Point.TwoPhase both ? mixture(fluid, both) : onePhase(fluid, (Point.OnePhase) point);
    }

    private static State onePhase(FluidModel fluid, Point.OnePhase point) {
        double m = fluid.fluid().molarMass();
        MolarState s = fluid.requirePhysical(point.state());
        fluid.coexistence().requireStable(fluid, point);
        double cv = s.isochoricHeatCapacity();
        double cp = s.isobaricHeatCapacity();
        double rho = s.density();
        double t = s.temperature();
        // w^2 = (cp/cv) (dp/drho)_T
        double w2 = cp / cv * s.pressureByDensity() / m;
        double expansion = s.pressureByTemperature() / (rho * s.pressureByDensity());
        // (dT/dp)_h = -(dh/drho)_T / (cp (dp/drho)_T)
        double jouleThomson = -s.enthalpyByDensity() / (cp * s.pressureByDensity());
        return new State(
                point.phase(),
                t,
                point.pressure(),
                rho * m,
                s.enthalpy() / m,
                s.entropy() / m,
                s.internalEnergy() / m,
                point.quality(),
                cp / m,
                cv / m,
                Math.sqrt(w2),
                jouleThomson,
                point.pressure() / (rho * fluid.model().gasConstant() * t),
                rho * m * w2 / point.pressure(),
                expansion,
                1 / (rho * s.pressureByDensity()));
    }

    private static State mixture(FluidModel fluid, Point.TwoPhase point) {
        double m = fluid.fluid().molarMass();
        MolarState l = point.liquid();
        MolarState v = point.vapor();
        double enthalpy = point.mix(l.enthalpy(), v.enthalpy());
        double rho = point.density();
        return new State(
                Phase.TWO_PHASE,
                point.temperature(),
                point.pressure(),
                rho * m,
                enthalpy / m,
                point.mix(l.entropy(), v.entropy()) / m,
                (enthalpy - point.pressure() / rho) / m,
                point.quality(),
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                point.pressure() / (rho * fluid.model().gasConstant() * point.temperature()),
                Double.NaN,
                Double.NaN,
                Double.NaN);
    }
}
