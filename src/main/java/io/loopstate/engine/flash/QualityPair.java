package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.RootScan;
import io.loopstate.engine.numerics.Roots;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * States of a given vapor quality and a density, enthalpy, entropy or internal energy: every one of them, since along a line
 * of constant quality each of these can pass through a maximum (the enthalpy of saturated vapor always does).
 */
final class QualityPair {
    private static final int CELLS = 48;
    private static final double STEP = 1e-6;

    private QualityPair() {}

    /** @param property of a point, in the units of the value */
    static List<Point> solve(FluidModel fluid, double quality, ToDoubleFunction<Point> property, double value) {
        double tc = fluid.criticalTemperature();
        double end = Math.sqrt(1 - fluid.minTemperature() / tc);
        double top = quality == 0 || quality == 1
                ? Coexistence.CLOSEST
                : fluid.coexistence().closestToCritical();
        // refuses a line whose cold end has two liquids before it is gone along
        at(fluid, quality, end);
        requireOutsideGap(fluid, quality, property, value, top);
        // over x = sqrt(1 - T/Tc), in which the lines are smooth up to the critical point
        return RootScan.roots(
                        x -> slope(fluid, quality, property, value, x, end),
                        RootScan.clustered(Math.sqrt(top), end, CELLS),
                        "temperature along a line of constant quality")
                .stream()
                .map(x -> at(fluid, quality, x))
                .toList();
    }

    /** What lies between the top and the critical point is not found, so it is refused and not passed over. */
    private static void requireOutsideGap(
            FluidModel fluid, double quality, ToDoubleFunction<Point> property, double value, double top) {
        if (top == Coexistence.CLOSEST) {
            return;
        }
        double atTop = property.applyAsDouble(at(fluid, quality, Math.sqrt(top))) - value;
        double atCritical = property.applyAsDouble(at(fluid, 0, Math.sqrt(Coexistence.CLOSEST))) - value;
        if (atTop * atCritical <= 0) {
            throw EngineException.of(
                    ErrorCode.TWO_PHASE_UNDEFINED,
                    "a state that fits lies so close to the critical point that liquid and vapor cannot be told apart");
        }
    }

    private static Point at(FluidModel fluid, double quality, double x) {
        double t = fluid.criticalTemperature() * (1 - x * x);
        return Saturated.atQuality(
                fluid, SplitVariable.TEMPERATURE, t, fluid.dome().atTemperature(t), quality);
    }

    private static Roots.ValueSlope slope(
            FluidModel fluid, double quality, ToDoubleFunction<Point> property, double value, double x, double end) {
        double beside = x + (x + STEP <= end ? STEP : -STEP);
        double here = property.applyAsDouble(at(fluid, quality, x));
        double slope = (property.applyAsDouble(at(fluid, quality, beside)) - here) / (beside - x);
        return new Roots.ValueSlope(here - value, slope);
    }
}
