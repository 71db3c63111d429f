package io.loopstate.engine.transport;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;
import java.util.Arrays;

/** What density adds to the viscosity beyond the dilute part and its initial density dependence, Pa s. */
sealed interface ResidualViscosity permits FrictionTheory, ResidualViscosity.Explicit {
    /** NaN where the correlation has no value. */
    double at(MolarState state);

    /** @param fluid the fluid the block belongs to, for its molar mass and gas constant */
    static ResidualViscosity of(JsonObject json, Fluid fluid) {
        return switch (json.text("form")) {
            case "batschinski-hildebrand" -> new BatschinskiHildebrand(json);
            case "friction-theory" -> new FrictionTheory(json, fluid.model().gasConstant());
            case "laesecke-muzny-2017" -> new LaeseckeMuzny(json);
            case "friend-ethane" -> new FriendIngham(json);
            case "muzny-hydrogen" -> new MuznyHuber(json, fluid.molarMass());
            default -> throw new IllegalArgumentException("unknown residual viscosity " + json.text("form"));
        };
    }

    /** A form that needs no equation of state, so that a corresponding state can stand in. */
    sealed interface Explicit extends ResidualViscosity {
        /** @param density mol/m3 */
        double at(double temperature, double density);

        @Override
        default double at(MolarState state) {
            return at(state.temperature(), state.density());
        }
    }

    /**
     * sum n delta^d tau^t exp(-gamma delta^l) + (sum n delta^d tau^t) (1/(delta0 - delta) - 1/delta0), the second part
     * optional; delta0(tau) is the close-packed density, a ratio of power sums.
     */
    final class BatschinskiHildebrand implements Explicit {
        private final double referenceTemperature;
        private final double referenceDensity;
        private final ReducedSum series;
        private final FreeVolume[] freeVolume;

        private BatschinskiHildebrand(JsonObject json) {
            referenceTemperature = json.number("Tref");
            referenceDensity = json.number("rhoRef");
            series = ReducedSum.of(json.object("series"));
            freeVolume = json.optionalObject("freeVolume").stream()
                    .map(FreeVolume::of)
                    .toArray(FreeVolume[]::new);
        }

        private record FreeVolume(ReducedSum factor, PowerSum numerator, PowerSum denominator) {
            static FreeVolume of(JsonObject json) {
                JsonObject packed = json.object("closePacked");
                return new FreeVolume(
                        ReducedSum.of(json),
                        PowerSum.of(packed.object("numerator")),
                        PowerSum.of(packed.object("denominator")));
            }

            double at(double tau, double delta) {
                double closePacked = numerator.at(tau) / denominator.at(tau);
                // there is no fluid beyond the close-packed density
                return delta < closePacked
                        ? factor.at(tau, delta) * (1 / (closePacked - delta) - 1 / closePacked)
                        : Double.NaN;
            }
        }

        @Override
        public double at(double temperature, double density) {
            double tau = referenceTemperature / temperature;
            double delta = density / referenceDensity;
            double sum = series.at(tau, delta);
            for (FreeVolume part : freeVolume) {
                sum += part.at(tau, delta);
            }
            return sum;
        }
    }

    /**
     * Carbon dioxide: E (c1 Tr r^3 + (r^2 + r^gamma)/(Tr - c2)), Tr = T/Tt, r = rho/rhot. Laesecke and Muzny, J. Phys. Chem.
     * Ref. Data 46, 013107 (2017).
     */
    final class LaeseckeMuzny implements Explicit {
        private final double c1;
        private final double c2;
        private final double gamma;
        private final double tripleTemperature;
        private final double tripleDensity;
        private final double factor;

        private LaeseckeMuzny(JsonObject json) {
            c1 = json.number("c1");
            c2 = json.number("c2");
            gamma = json.number("gamma");
            tripleTemperature = json.number("Tt");
            double massDensity = json.number("rhoMassT");
            double molarMass = json.number("M");
            tripleDensity = massDensity / molarMass;
            factor = Math.pow(massDensity, 2.0 / 3)
                    * Math.sqrt(json.number("R") * tripleTemperature)
                    / (Math.pow(molarMass, 1.0 / 6) * Math.cbrt(json.number("NA")));
        }

        @Override
        public double at(double temperature, double density) {
            double tr = temperature / tripleTemperature;
            double r = density / tripleDensity;
            return factor * (c1 * tr * r * r * r + (r * r + Math.pow(r, gamma)) / (tr - c2));
        }
    }

    /**
     * C N / (1 + Q), N and Q sums of g delta^r tau^s. Ethane: Friend, Ingham and Ely, J. Phys. Chem. Ref. Data 20, 275 (1991).
     */
    final class FriendIngham implements Explicit {
        private final double c;
        private final double referenceTemperature;
        private final double referenceDensity;
        private final ReducedSum numerator;
        private final ReducedSum denominator;

        private FriendIngham(JsonObject json) {
            c = json.number("C");
            referenceTemperature = json.number("Tref");
            referenceDensity = json.number("rhoRef");
            int first = (int) json.number("numeratorTerms");
            int last = json.numbers("g").length;
            numerator = terms(json, 0, first);
            denominator = terms(json, first, last);
        }

        private static ReducedSum terms(JsonObject json, int from, int to) {
            return new ReducedSum(
                    Arrays.copyOfRange(json.numbers("g"), from, to),
                    Arrays.copyOfRange(json.numbers("r"), from, to),
                    Arrays.copyOfRange(json.numbers("s"), from, to),
                    new double[0],
                    new double[0]);
        }

        @Override
        public double at(double temperature, double density) {
            double tau = referenceTemperature / temperature;
            double delta = density / referenceDensity;
            return c * numerator.at(tau, delta) / (1 + denominator.at(tau, delta));
        }
    }

    /**
     * Hydrogen: c0 r^2 exp(c1 Tr + c2/Tr + c3 r^2/(c4 + Tr) + c5 r^6). Muzny, Huber and Kazakov, J. Chem. Eng. Data 58, 969
     * (2013); r is a mass density over a reference in kg/m3.
     */
    final class MuznyHuber implements Explicit {
        private final double referenceTemperature;
        private final double referenceDensity;
        private final double[] c;

        private MuznyHuber(JsonObject json, double molarMass) {
            referenceTemperature = json.number("Tref");
            referenceDensity = json.number("rhoMassRef") / molarMass;
            c = json.numbers("c");
        }

        @Override
        public double at(double temperature, double density) {
            double tr = temperature / referenceTemperature;
            double r2 = density / referenceDensity;
            r2 *= r2;
            return c[0] * r2 * Math.exp(c[1] * tr + c[2] / tr + c[3] * r2 / (c[4] + tr) + c[5] * r2 * r2 * r2);
        }
    }
}
