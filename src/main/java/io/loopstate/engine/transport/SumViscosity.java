package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;
import java.util.Optional;

/** eta = eta0(T) (1 + B(T) rho) + residual(T, rho), the second part of the bracket optional. */
record SumViscosity(DiluteViscosity dilute, Optional<InitialDensity> initialDensity, ResidualViscosity residual)
        implements Viscosity {

    static SumViscosity of(JsonObject json, Fluid fluid) {
        return new SumViscosity(
                DiluteViscosity.of(json.object("dilute")),
                json.optionalObject("initialDensity").map(InitialDensity::new),
                ResidualViscosity.of(json.object("residual"), fluid));
    }

    @Override
    public double at(Point point) {
        double temperature = point.state().temperature();
        double gas = dilute.at(temperature);
        return gas + linear(gas, temperature, point.state().density()) + residual.at(point.state());
    }

    private double linear(double gas, double temperature, double density) {
        return initialDensity.isPresent() ? gas * initialDensity.get().at(temperature) * density : 0;
    }

    /** Viscosity less its dilute part; for residual parts that need no equation of state. */
    double excess(ResidualViscosity.Explicit explicit, double temperature, double density) {
        return linear(dilute.at(temperature), temperature, density) + explicit.at(temperature, density);
    }
}
