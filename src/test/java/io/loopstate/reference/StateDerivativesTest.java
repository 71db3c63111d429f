package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Fluid;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Derivatives that a state carries against differences of the properties that it carries: dp = (dp/drho) drho + (dp/dT) dT,
 * T ds = du - p/rho^2 drho and da = -s dT + p/rho^2 drho; and its residual entropy against the entropy of the ideal gas.
 * All over the range of every fluid, inside the dome too.
 */
class StateDerivativesTest {
    /** Shares of the way from the lowest to the highest temperature. */
    private static final double[] TEMPERATURE_SHARES = {0, 0.1, 0.25, 0.4, 0.7, 1};
    /** Of the reducing density. */
    private static final double[] DELTAS = {1e-4, 0.1, 0.5, 0.92, 1.6, 2.4, 3};

    private static final double FIRST_STEP = 0.02;
    private static final double QUOTIENT_ROUNDING = 1e-11;
    /** As in {@link HelmholtzTermsTest}. */
    private static final double LARGEST_EXPONENT = 30;
    /** Of the reducing density: residual terms, at least proportional to it, vanish beside one. */
    private static final double THIN = 1e-30;
    /** Of a difference of two sums, relative to their size. */
    private static final double ROUNDING = 1e-13;

    static Stream<CoefficientFile> files() {
        return CoefficientFile.all();
    }

    @ParameterizedTest
    @MethodSource("files")
    void agreeWithDifferences(CoefficientFile file) {
        Fluid fluid = file.fluid();
        PlainHelmholtz plain = PlainHelmholtz.of(file);
        double lowest = fluid.limits().minTemperature();
        double highest = fluid.limits().maxTemperature();
        for (double share : TEMPERATURE_SHARES) {
            double t = lowest + share * (highest - lowest);
            for (double delta : DELTAS) {
                double rho = delta * fluid.model().reducingDensity();
                double tau = fluid.model().reducingTemperature() / t;
                double residual = plain.residual(tau, delta).magnitude();
                double ideal = plain.ideal(tau).magnitude() + Math.abs(Math.log(delta));
                new Point(fluid, t, rho, LARGEST_EXPONENT * (1 + residual), LARGEST_EXPONENT * (ideal + residual))
                        .check();
            }
        }
    }

    /**
     * A state and what is known of the size of the sums behind it.
     *
     * @param t K
     * @param rho mol/m3
     * @param mechanical magnitude of terms in p / (rho R T)
     * @param caloric magnitude of terms in h / (R T)
     */
    private record Point(Fluid fluid, double t, double rho, double mechanical, double caloric) {
        private MolarState at(double temperature, double density) {
            return fluid.model().isotherm(temperature).state(density);
        }

        void check() {
            HelmholtzModel model = fluid.model();
            MolarState s = at(t, rho);
            double rt = model.gasConstant() * t;
            double r = model.gasConstant();
            inDensity("pressure", d -> at(t, d).pressure(), rho * s.pressureByDensity(), rt * rho * mechanical);
            inDensity("enthalpy", d -> at(t, d).enthalpy(), rho * s.enthalpyByDensity(), rt * caloric);
            inDensity("entropy", d -> at(t, d).entropy(), rho * s.entropyByDensity(), r * caloric);
            inDensity("Helmholtz energy", d -> helmholtz(at(t, d)), s.pressure() / rho, rt * caloric);
            inTemperature("pressure", x -> at(x, rho).pressure(), t * s.pressureByTemperature(), rt * rho * mechanical);
            inTemperature(
                    "internal energy", x -> at(x, rho).internalEnergy(), t * s.isochoricHeatCapacity(), rt * caloric);
            inTemperature("enthalpy", x -> at(x, rho).enthalpy(), t * s.enthalpyByTemperature(), rt * caloric);
            inTemperature("entropy", x -> at(x, rho).entropy(), s.isochoricHeatCapacity(), r * caloric);
            inTemperature("Helmholtz energy", x -> helmholtz(at(x, rho)), -t * s.entropy(), rt * caloric);
            pressureAlone(s, model.isotherm(t), rt);
            residual(s, r);
        }

        /** s_r(T, rho) = s(T, rho) - s_ideal(T, rho), of a gas so thin that it is ideal, compressed as an ideal gas. */
        private void residual(MolarState s, double r) {
            double thin = THIN * fluid.model().reducingDensity();
            double ideal = at(t, thin).entropy() - r * Math.log(rho / thin);
            String where = fluid.designation() + " at " + t + " K, " + rho + " mol/m3: residual entropy";
            assertEquals((s.entropy() - ideal) / r, s.residualEntropy(), ROUNDING * caloric, where);
        }

        /** The short way to pressure that density iterations take. */
        private void pressureAlone(MolarState s, Isotherm isotherm, double rt) {
            Isotherm.Pressure p = isotherm.pressure(rho);
            double rounding = QUOTIENT_ROUNDING * rt * mechanical;
            assertEquals(s.pressure(), p.value(), rho * rounding, "pressure alone");
            assertEquals(s.pressureByDensity(), p.slope(), rounding, "its slope");
            if (!fluid.model().nonAnalytic()) {
                inDensity(
                        "slope of pressure",
                        d -> isotherm.pressure(d).slope(),
                        rho * p.curvature(),
                        LARGEST_EXPONENT * rt * mechanical);
            }
        }

        private static double helmholtz(MolarState s) {
            return s.internalEnergy() - s.temperature() * s.entropy();
        }

        private void inDensity(String name, DoubleUnaryOperator f, double expected, double magnitude) {
            compare(
                    name + " by density",
                    Slope.of(y -> f.applyAsDouble(Math.exp(y)), Math.log(rho), FIRST_STEP),
                    expected,
                    magnitude);
        }

        private void inTemperature(String name, DoubleUnaryOperator f, double expected, double magnitude) {
            compare(
                    name + " by temperature",
                    Slope.of(y -> f.applyAsDouble(Math.exp(y)), Math.log(t), FIRST_STEP),
                    expected,
                    magnitude);
        }

        private void compare(String name, Slope slope, double expected, double magnitude) {
            String where = fluid.designation() + " at " + t + " K, " + rho + " mol/m3: " + name;
            double bound = QUOTIENT_ROUNDING * (magnitude + Math.abs(expected));
            assertTrue(slope.error() <= bound, where + ": differences have not settled");
            assertEquals(slope.value(), expected, bound, where);
        }
    }
}
