package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Heat capacity, speed of sound and the other coefficients that a state carries against differences between states along
 * isobars, isotherms, isenthalps and isentropes: what the names mean, whatever the formulas behind them.
 */
class FlashDerivativesTest {
    /** Of the logarithm of temperature or pressure. */
    private static final double FIRST_STEP = 5e-3;
    /** Rounding of a flash, 1e-14 of the variable sought and more where terms cancel, over the smallest step, 7e-5. */
    private static final double QUOTIENT_ROUNDING = 1e-10;

    private static final double BOUND = 1e-8;

    static Stream<Fluid> fluids() {
        return CoefficientFile.all().map(CoefficientFile::fluid);
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void coefficientsAreTheDerivativesTheyName(Fluid fluid) {
        Equilibrium equilibrium = Fluids.widened(fluid);
        states(equilibrium).forEach(state -> new Point(equilibrium, state).check());
    }

    /** A liquid, a vapor and a supercritical state. */
    private static List<State> states(Equilibrium e) {
        Refrigerant fluid = e.refrigerant();
        double tc = fluid.criticalPoint().temperature();
        double lowest = fluid.limits().minTemperature();
        double t = lowest + 0.6 * (tc - lowest);
        double saturated = e.saturationAtTemperature(t).bubble().pressure();
        return List.of(
                e.atPressureTemperature(2 * saturated, t),
                e.atPressureTemperature(0.5 * saturated, t),
                e.atPressureTemperature(1.5 * fluid.criticalPoint().pressure(), 1.08 * tc));
    }

    private record Point(Equilibrium e, State s) {
        void check() {
            double t = s.temperature();
            double p = s.pressure();
            double h = s.specificEnthalpy();
            double entropy = s.specificEntropy();
            Slope heating = slope(x -> e.atPressureTemperature(p, x).specificEnthalpy(), t);
            same("cp", heating, t * s.isobaricHeatCapacity(), t * s.isobaricHeatCapacity());
            Slope expansion = slope(x -> -Math.log(e.atPressureTemperature(p, x).density()), t);
            same("expansion", expansion, t * s.thermalExpansion(), 1);
            Slope compression =
                    slope(x -> Math.log(e.atPressureTemperature(x, t).density()), p);
            same("compressibility", compression, p * s.isothermalCompressibility(), 1);
            Slope throttling = slope(x -> e.atPressureEnthalpy(x, h).temperature(), p);
            same("Joule-Thomson coefficient", throttling, p * s.jouleThomsonCoefficient(), t);
            Slope isentropic = slope(x -> e.atPressureEntropy(x, entropy).density(), p);
            same("speed of sound", isentropic, p / (s.speedOfSound() * s.speedOfSound()), s.density());
            same("isentropic exponent", isentropic, s.density() / s.isentropicExponent(), s.density());
        }

        private static Slope slope(DoubleUnaryOperator f, double x) {
            return Slope.of(y -> f.applyAsDouble(Math.exp(y)), Math.log(x), FIRST_STEP);
        }

        /** @param magnitude of the function that was differenced */
        private void same(String name, Slope difference, double carried, double magnitude) {
            String where =
                    e.refrigerant().designation() + " at " + s.temperature() + " K, " + s.pressure() + " Pa: " + name;
            double bound = BOUND * Math.abs(carried) + QUOTIENT_ROUNDING * magnitude;
            assertTrue(difference.error() <= bound, where + ": differences have not settled");
            assertEquals(difference.value(), carried, bound, where);
        }
    }
}
