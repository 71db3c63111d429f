package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.JsonObject;

/** Viscosity in the limit of zero density: a function of temperature (K) alone, in Pa s. */
sealed interface DiluteViscosity {
    double at(double temperature);

    static DiluteViscosity of(JsonObject json) {
        return switch (json.text("form")) {
            case "chapman-enskog" -> new ChapmanEnskog(json);
            case "neufeld" -> new Neufeld(json.number("C"), json.number("M"), json);
            case "power-T" -> new PowerSeries(json);
            case "laesecke-muzny-2017" -> new LaeseckeMuzny(json);
            case "friend-ethane" -> new FriendIngham(json);
            default -> throw new IllegalArgumentException("unknown dilute viscosity " + json.text("form"));
        };
    }

    /** eta0 = C (M T)^(1/2) / (sigma^2 exp(sum a (ln T*)^t)); sigma in nm, M in g/mol. */
    final class ChapmanEnskog implements DiluteViscosity {
        private final double factor;
        private final double epsilonOverK;
        private final PowerSum logOmega;

        private ChapmanEnskog(JsonObject json) {
            double sigma = json.number("sigma");
            factor = json.number("C") * Math.sqrt(json.number("M")) / (sigma * sigma);
            epsilonOverK = json.number("epsilonOverK");
            logOmega = new PowerSum(json.numbers("a"), json.numbers("t"));
        }

        @Override
        public double at(double temperature) {
            double omega = Math.exp(logOmega.at(Math.log(temperature / epsilonOverK)));
            return factor * Math.sqrt(temperature) / omega;
        }
    }

    /** eta0 = C (M T)^(1/2) / (sigma^2 Omega) with {@link CollisionIntegral#neufeld}; sigma in nm, M in g/mol. */
    final class Neufeld implements DiluteViscosity {
        /** (5/16) (k / (pi N_A))^(1/2) in the units of the formula, as Huber, Laesecke and Perkins (2003) print it. */
        private static final double C = 2.6692e-8;

        private final double factor;
        private final double epsilonOverK;

        private Neufeld(double c, double molarMass, JsonObject json) {
            double sigma = json.number("sigma");
            factor = c * Math.sqrt(molarMass) / (sigma * sigma);
            epsilonOverK = json.number("epsilonOverK");
        }

        /** From {@code sigma} and {@code epsilonOverK} alone; molar mass in kg/mol. */
        static Neufeld of(JsonObject json, double molarMass) {
            return new Neufeld(C, 1000 * molarMass, json);
        }

        @Override
        public double at(double temperature) {
            return factor * Math.sqrt(temperature) / CollisionIntegral.neufeld(temperature / epsilonOverK);
        }
    }

    /** eta0 = sum a (T/Tref)^t. */
    final class PowerSeries implements DiluteViscosity {
        private final double referenceTemperature;
        private final PowerSum sum;

        private PowerSeries(JsonObject json) {
            referenceTemperature = json.number("Tref");
            sum = new PowerSum(json.numbers("a"), json.numbers("t"));
        }

        @Override
        public double at(double temperature) {
            return sum.at(temperature / referenceTemperature);
        }
    }

    /** Carbon dioxide. Laesecke and Muzny, J. Phys. Chem. Ref. Data 46, 013107 (2017). */
    final class LaeseckeMuzny implements DiluteViscosity {
        private final double c;
        private final double[] a;

        private LaeseckeMuzny(JsonObject json) {
            c = json.number("C");
            a = json.numbers("a");
        }

        @Override
        public double at(double temperature) {
            double third = Math.cbrt(temperature);
            double root = Math.sqrt(temperature);
            return c
                    * root
                    / (a[0]
                            + a[1] * Math.sqrt(third)
                            + a[2] * Math.exp(a[3] * third)
                            + (a[4] + a[5] * third) * Math.exp(-third)
                            + a[6] * root);
        }
    }

    /** eta0 = C T*^(1/2) sum c T*^e. Ethane: Friend, Ingham and Ely, J. Phys. Chem. Ref. Data 20, 275 (1991). */
    final class FriendIngham implements DiluteViscosity {
        private final double c;
        private final double epsilonOverK;
        private final PowerSum omega;

        private FriendIngham(JsonObject json) {
            c = json.number("C");
            epsilonOverK = json.number("epsilonOverK");
            omega = new PowerSum(json.numbers("c"), json.numbers("e"));
        }

        @Override
        public double at(double temperature) {
            double reduced = temperature / epsilonOverK;
            return c * Math.sqrt(reduced) * omega.at(reduced);
        }
    }
}
