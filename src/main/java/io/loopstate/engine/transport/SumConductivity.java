package io.loopstate.engine.transport;

import io.loopstate.engine.eos.MolarState;
import java.util.Optional;

/** lambda = dilute(T) + residual(T, rho) + critical(T, rho), the last where the source gives it. */
record SumConductivity(DiluteConductivity dilute, ResidualConductivity residual, Optional<CriticalEnhancement> critical)
        implements ThermalConductivity {

    @Override
    public double at(Point point, double viscosity) {
        MolarState state = point.state();
        double background = dilute.at(state) + residual.at(state.temperature(), state.density());
        return critical.isPresent() ? background + critical.get().at(state, viscosity) : background;
    }
}
