package io.loopstate.engine.transport;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;
import java.util.function.Supplier;

/** Thermal conductivity in the limit of zero density: reads only what depends on temperature, W/(m K). */
sealed interface DiluteConductivity {
    double at(MolarState state);

    /** @param viscosity the dilute viscosity of the fluid, asked for by the forms that build on it */
    static DiluteConductivity of(JsonObject json, Fluid fluid, Supplier<DiluteViscosity> viscosity) {
        return switch (json.text("form")) {
            case "rational" -> new Rational(json);
            case "eta0-polynomial" -> new ViscosityPolynomial(json, fluid, viscosity.get());
            case "friend-ethane" -> new FriendIngham(json, fluid, viscosity.get());
            default -> throw new IllegalArgumentException("unknown dilute thermal conductivity " + json.text("form"));
        };
    }

    /** (sum n (T/Tref)^t over the numerator) / (the same over the denominator). */
    record Rational(double referenceTemperature, PowerSum numerator, PowerSum denominator)
            implements DiluteConductivity {
        private Rational(JsonObject json) {
            this(json.number("Tref"), PowerSum.of(json.object("numerator")), PowerSum.of(json.object("denominator")));
        }

        @Override
        public double at(MolarState state) {
            double reduced = state.temperature() / referenceTemperature;
            return numerator.at(reduced) / denominator.at(reduced);
        }
    }

    /** N1 eta0 + sum n tau^t. Lemmon and Jacobsen, Int. J. Thermophys. 25, 21 (2004). */
    record ViscosityPolynomial(
            double reducingTemperature, double viscosityFactor, DiluteViscosity viscosity, PowerSum polynomial)
            implements DiluteConductivity {
        private ViscosityPolynomial(JsonObject json, Fluid fluid, DiluteViscosity viscosity) {
            this(fluid.model().reducingTemperature(), json.number("eta0Factor"), viscosity, PowerSum.of(json));
        }

        @Override
        public double at(MolarState state) {
            double tau = reducingTemperature / state.temperature();
            return viscosityFactor * viscosity.at(state.temperature()) + polynomial.at(tau);
        }
    }

    /**
     * C eta0 (3.75 - (f0 + f1/T*) (tau^2 alpha0_tautau + 1.5)). Ethane: Friend, Ingham and Ely, J. Phys. Chem. Ref. Data 20,
     * 275 (1991).
     */
    final class FriendIngham implements DiluteConductivity {
        private final double c;
        private final double epsilonOverK;
        private final double f0;
        private final double f1;
        private final double gasConstant;
        private final DiluteViscosity viscosity;

        private FriendIngham(JsonObject json, Fluid fluid, DiluteViscosity viscosity) {
            c = json.number("C");
            epsilonOverK = json.number("epsilonOverK");
            double[] f = json.numbers("f");
            f0 = f[0];
            f1 = f[1];
            gasConstant = fluid.model().gasConstant();
            this.viscosity = viscosity;
        }

        @Override
        public double at(MolarState state) {
            double temperature = state.temperature();
            double curvature = 1 - state.idealIsobaricHeatCapacity() / gasConstant;
            double internal = (f0 + f1 * epsilonOverK / temperature) * (curvature + 1.5);
            return c * viscosity.at(temperature) * (3.75 - internal);
        }
    }
}
