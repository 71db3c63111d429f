package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.engine.eos.Derivatives;
import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.IdealHelmholtz;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.eos.ResidualHelmholtz;
import io.loopstate.engine.eos.ResidualTerm;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The engine's compiled Helmholtz energy and its derivatives against the terms summed one by one in their published form,
 * differentiated by differences. The fluids use every form of term but that of Kunz and Wagner, which has a test of its own.
 */
class HelmholtzTermsTest {
    /** Reduced densities: dilute gas, gas, both sides of the critical one, liquid, compressed liquid. */
    private static final double[] DELTAS = {1e-5, 0.02, 0.4, 0.93, 1.12, 1.7, 2.5, 3.1};

    private static final double[] REDUCED_TEMPERATURES = {0.45, 0.6, 0.8, 0.97, 1.04, 1.3, 2};
    /** Of the logarithm of the variable. */
    private static final double FIRST_STEP = 0.02;
    /** Rounding of a sum of terms of some ten operations each, relative to the sum of their magnitudes. */
    private static final double ROUNDING = 1e-13;
    /** The same of a difference quotient: 1e-15 in a term over the smallest step, 3e-4. */
    private static final double QUOTIENT_ROUNDING = 1e-11;
    /** A derivative in the logarithm of a variable multiplies a term by its exponents, and its rounding with it. */
    private static final double LARGEST_EXPONENT = 30;

    static Stream<CoefficientFile> files() {
        return CoefficientFile.all();
    }

    @ParameterizedTest
    @MethodSource("files")
    void residualTermsOfEveryFluid(CoefficientFile file) {
        PlainHelmholtz plain = PlainHelmholtz.of(file);
        compareResidual(file.toString(), plain, file.fluid().model());
    }

    /** Kunz and Wagner, J. Chem. Eng. Data 57 (2012) 3032-3091, departure function of methane and nitrogen. */
    @Test
    void formOfKunzAndWagner() throws IOException {
        JsonNode group = new ObjectMapper().readTree("""
                {"form": "gerg",
                 "n": [-0.034800214576142, -0.13333813013896, -0.011993694974627, 0.069243379775168],
                 "d": [1, 2, 2, 2],
                 "t": [7.85, 5.4, 0, 0.75],
                 "eta": [1, 1, 0.25, 0],
                 "epsilon": [0.5, 0.5, 0.5, 0.5],
                 "beta": [1, 1, 2.5, 3],
                 "gamma": [0.5, 0.5, 0.5, 0.5]}""");
        List<ResidualTerm> terms = new ArrayList<>();
        for (int k = 0; k < group.get("n").size(); k++) {
            terms.add(ResidualTerm.kunzWagner(
                    at(group, "n", k),
                    (int) at(group, "d", k),
                    at(group, "t", k),
                    at(group, "eta", k),
                    at(group, "epsilon", k),
                    at(group, "beta", k),
                    at(group, "gamma", k)));
        }
        IdealHelmholtz none = IdealHelmholtz.of(0, 0, 0, new double[0][], new double[0][]);
        HelmholtzModel model = new HelmholtzModel(8.314472, 200, 10000, none, new ResidualHelmholtz(terms));
        compareResidual("departure", new PlainHelmholtz(List.of(), List.of(group)), model);
    }

    private static double at(JsonNode group, String name, int k) {
        return group.get(name).get(k).asDouble();
    }

    private static void compareResidual(String name, PlainHelmholtz plain, HelmholtzModel model) {
        for (double reduced : REDUCED_TEMPERATURES) {
            for (double delta : DELTAS) {
                double tau = 1 / reduced;
                Derivatives r = derivatives(model, tau, delta);
                PlainHelmholtz.Sum sum = plain.residual(tau, delta);
                String where = name + " at tau " + tau + ", delta " + delta;
                assertEquals(sum.value(), r.value(), ROUNDING * sum.magnitude(), where + ": alphar");
                double m = sum.magnitude();
                byLogarithm(where + ": d", d -> plain.residual(tau, d).value(), delta, r.d(), m);
                byLogarithm(where + ": t", t -> plain.residual(t, delta).value(), tau, r.t(), m);
                double m1 = LARGEST_EXPONENT * m;
                byLogarithm(where + ": dd", d -> derivatives(model, tau, d).d(), delta, r.dd() + r.d(), m1);
                byLogarithm(where + ": dt", t -> derivatives(model, t, delta).d(), tau, r.dt(), m1);
                byLogarithm(where + ": tt", t -> derivatives(model, t, delta).t(), tau, r.tt() + r.t(), m1);
            }
        }
    }

    private static Derivatives derivatives(HelmholtzModel model, double tau, double delta) {
        return model.isotherm(model.reducingTemperature() / tau).residual(delta * model.reducingDensity());
    }

    @ParameterizedTest
    @MethodSource("files")
    void idealTermsOfEveryFluid(CoefficientFile file) {
        PlainHelmholtz plain = PlainHelmholtz.of(file);
        HelmholtzModel model = file.fluid().model();
        for (double reduced : REDUCED_TEMPERATURES) {
            double tau = 1 / reduced;
            PlainHelmholtz.Sum sum = plain.ideal(tau);
            Ideal ideal = Ideal.of(model, tau);
            String where = file + " at tau " + tau;
            assertEquals(sum.value(), ideal.value(), ROUNDING * sum.magnitude(), where + ": alpha0");
            double m = sum.magnitude();
            byLogarithm(where + ": t", t -> plain.ideal(t).value(), tau, ideal.t(), m);
            double m1 = LARGEST_EXPONENT * m;
            byLogarithm(where + ": tt", t -> Ideal.of(model, t).t(), tau, ideal.tt() + ideal.t(), m1);
            assertEquals(1 - ideal.tt(), ideal.heatCapacity(), ROUNDING * m1, where + ": cp0");
        }
    }

    /**
     * The ideal part as it shows in the properties of a gas of nearly no density.
     *
     * @param value alpha0 - ln(delta)
     * @param t tau alpha0_tau
     * @param tt tau^2 alpha0_tautau
     * @param heatCapacity cp0/R
     */
    private record Ideal(double value, double t, double tt, double heatCapacity) {
        private static final double DELTA = 1e-30;

        static Ideal of(HelmholtzModel model, double tau) {
            Isotherm isotherm = model.isotherm(model.reducingTemperature() / tau);
            MolarState s = isotherm.state(DELTA * model.reducingDensity());
            double r = model.gasConstant();
            double enthalpy = s.enthalpy() / (r * isotherm.temperature());
            double value = enthalpy - 1 - s.entropy() / r - Math.log(DELTA);
            return new Ideal(value, enthalpy - 1, -s.isochoricHeatCapacity() / r, s.idealIsobaricHeatCapacity() / r);
        }
    }

    /** x df/dx from differences in ln x, against the engine's. */
    private static void byLogarithm(String where, DoubleUnaryOperator f, double x, double expected, double magnitude) {
        Slope slope = Slope.of(y -> f.applyAsDouble(Math.exp(y)), Math.log(x), FIRST_STEP);
        double bound = QUOTIENT_ROUNDING * (magnitude + Math.abs(expected));
        assertTrue(slope.error() <= bound, where + ": differences have not settled");
        assertEquals(slope.value(), expected, bound, where);
    }
}
