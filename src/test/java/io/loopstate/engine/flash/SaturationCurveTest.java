package io.loopstate.engine.flash;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Refrigerant;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The stored saturation line against the conditions of phase equilibrium and against the converged iteration. */
class SaturationCurveTest {
    private static final int TEMPERATURES = 200;
    /** x = sqrt(1 - T/Tc): 0.1 % below the critical temperature. */
    private static final double NEAR_CRITICAL = 0.0316;

    private static final double BOUND = 1e-10;
    /** Within 0.1 % of the critical temperature, down to 1e-5 of it. */
    private static final double NEAR_CRITICAL_BOUND = 5e-8;

    private static final double CLOSEST = 0.00316;

    static Stream<Fluid> fluids() {
        return Catalog.bundled().all().stream().filter(f -> f.kind() == Refrigerant.Kind.PURE);
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void coexistingPhasesHaveEqualPressureAndGibbsEnergy(Fluid fluid) {
        SaturationCurve curve = new SaturationCurve(fluid);
        SaturationNodes solver = new SaturationNodes(fluid);
        double tc = fluid.criticalPoint().temperature();
        double end = Math.sqrt(1 - fluid.limits().minTemperature() / tc);
        for (int i = 0; i <= TEMPERATURES; i++) {
            double x = CLOSEST + (end - CLOSEST) * i / TEMPERATURES;
            double t = i == TEMPERATURES ? fluid.limits().minTemperature() : tc * (1 - x * x);
            double bound = x < NEAR_CRITICAL ? NEAR_CRITICAL_BOUND : BOUND;
            Dome.Edges edges = curve.atTemperature(t);
            MolarState liquid = fluid.model().isotherm(t).state(edges.liquidDensity());
            MolarState vapor = fluid.model().isotherm(t).state(edges.vaporDensity());
            String where = fluid.designation() + " at " + t + " K";
            double rt = fluid.model().gasConstant() * t;
            assertEquals(0, (liquid.gibbsEnergy() - vapor.gibbsEnergy()) / rt, bound, where);
            assertEquals(1, vapor.pressure() / edges.dewPressure(), bound, where);
            // a liquid's pressure is as good as its density: over the bulk modulus
            double modulus = liquid.density() * liquid.pressureByDensity();
            assertEquals(
                    0,
                    (liquid.pressure() - edges.bubblePressure()) / Math.max(modulus, rt * liquid.density() * x * x),
                    bound,
                    where);
            assertEquals(
                    solver.density(x),
                    Math.log(edges.liquidDensity() / fluid.criticalMolarDensity()) / x,
                    bound / x,
                    where);
            assertEquals(
                    solver.density(-x),
                    -Math.log(edges.vaporDensity() / fluid.criticalMolarDensity()) / x,
                    bound / x,
                    where);
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void byPressureIsTheInverseOfByTemperature(Fluid fluid) {
        SaturationCurve curve = new SaturationCurve(fluid);
        double tc = fluid.criticalPoint().temperature();
        double tMin = fluid.limits().minTemperature();
        for (int i = 0; i < TEMPERATURES; i++) {
            double t = tMin + (tc - tMin) * i / TEMPERATURES;
            double p = curve.atTemperature(t).dewPressure();
            assertEquals(t, curve.atPressure(p).dewTemperature(), 1e-11 * t, fluid.designation());
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void reachesTheCriticalPoint(Fluid fluid) {
        SaturationCurve curve = new SaturationCurve(fluid);
        double tc = fluid.criticalPoint().temperature();
        double last = Double.POSITIVE_INFINITY;
        for (double distance = 1e-3; distance > 1e-12; distance *= 0.3) {
            Dome.Edges edges = curve.atTemperature(tc * (1 - distance));
            double width = edges.liquidDensity() - edges.vaporDensity();
            assertTrue(width > 0 && width < last, fluid.designation() + " at 1 - " + distance);
            assertTrue(edges.dewPressure() < fluid.criticalPoint().pressure(), fluid.designation());
            last = width;
        }
    }
}
