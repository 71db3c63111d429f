package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.numerics.Roots;

/**
 * States at a density and an enthalpy, entropy or internal energy. Along an isochore each of them rises with temperature,
 * inside the dome and outside, so there is one state.
 */
final class DensityCaloric {
    private static final double TOLERANCE = 1e-15;

    private DensityCaloric() {}

    static Point solve(FluidModel fluid, double density, Caloric caloric, double value) {
        double edge = IsochoreDome.temperature(fluid, density);
        MolarState onEdge = fluid.isotherm(edge).state(density);
        double beyond = value - caloric.of(onEdge);
        double t;
        if (fluid.negligible(caloric, beyond, onEdge)) {
            t = edge;
        } else if (beyond > 0) {
            t = outside(fluid, density, caloric, value, onEdge);
        } else {
            t = inside(fluid, density, caloric, value, edge);
        }
        // the density of cold water has a maximum, so that its isochores can pass through the dome twice
        return TemperatureDensity.solve(fluid, t, density);
    }

    private static double outside(FluidModel fluid, double density, Caloric caloric, double value, MolarState onEdge) {
        double tMax = fluid.maxTemperature();
        MolarState hottest = fluid.isotherm(tMax).state(density);
        double beyond = value - caloric.of(hottest);
        if (beyond > 0) {
            if (fluid.negligible(caloric, beyond, hottest)) {
                return tMax;
            }
            throw outOfRange(fluid, density, caloric, value);
        }
        double edge = onEdge.temperature();
        return Roots.newton(
                x -> {
                    MolarState s = fluid.isotherm(x).state(density);
                    return new Roots.ValueSlope(caloric.of(s) - value, caloric.byTemperature(s));
                },
                edge,
                tMax,
                edge + (value - caloric.of(onEdge)) / caloric.byTemperature(onEdge),
                TOLERANCE,
                true,
                "temperature along the isochore");
    }

    private static double inside(FluidModel fluid, double density, Caloric caloric, double value, double edge) {
        double tMin = fluid.minTemperature();
        if (edge == tMin) {
            throw outOfRange(fluid, density, caloric, value);
        }
        double lowest = caloric.of(TemperatureDensity.solve(fluid, tMin, density));
        if (value <= lowest) {
            if (fluid.negligible(caloric, value - lowest, fluid.isotherm(tMin).state(density))) {
                return tMin;
            }
            throw outOfRange(fluid, density, caloric, value);
        }
        return Roots.brent(
                x -> caloric.of(TemperatureDensity.solve(fluid, x, density)) - value,
                tMin,
                edge,
                TOLERANCE,
                "temperature along the isochore inside the dome");
    }

    private static EngineException outOfRange(FluidModel fluid, double density, Caloric caloric, double value) {
        return fluid.outOfRange(
                caloric,
                value,
                caloric.of(TemperatureDensity.solve(fluid, fluid.minTemperature(), density)),
                caloric.of(fluid.isotherm(fluid.maxTemperature()).state(density)));
    }
}
