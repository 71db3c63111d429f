package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
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
        if (value < caloric.of(onEdge)) {
            return mixture(fluid, density, caloric, value, edge);
        }
        double tMax = fluid.maxTemperature();
        double highest = caloric.of(fluid.isotherm(tMax).state(density));
        if (value > highest) {
            throw fluid.outOfRange(caloric, value, lowest(fluid, density, caloric, edge), highest);
        }
        double t = Roots.newton(
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
        // the density of cold water has a maximum, so that its isochores can pass through the dome twice
        return TemperatureDensity.solve(fluid, t, density);
    }

    private static Point mixture(FluidModel fluid, double density, Caloric caloric, double value, double edge) {
        double tMin = fluid.minTemperature();
        if (edge == tMin) {
            throw fluid.outOfRange(
                    caloric,
                    value,
                    lowest(fluid, density, caloric, edge),
                    caloric.of(fluid.isotherm(fluid.maxTemperature()).state(density)));
        }
        Saturated.requireCoexisting(fluid);
        if (value < lowest(fluid, density, caloric, edge)) {
            throw fluid.outOfRange(
                    caloric,
                    value,
                    lowest(fluid, density, caloric, edge),
                    caloric.of(fluid.isotherm(fluid.maxTemperature()).state(density)));
        }
        double t = Roots.brent(
                x -> caloric.of(TemperatureDensity.solve(fluid, x, density)) - value,
                tMin,
                edge,
                TOLERANCE,
                "temperature along the isochore inside the dome");
        return TemperatureDensity.solve(fluid, t, density);
    }

    private static double lowest(FluidModel fluid, double density, Caloric caloric, double edge) {
        return edge == fluid.minTemperature()
                ? caloric.of(fluid.isotherm(edge).state(density))
                : caloric.of(TemperatureDensity.solve(fluid, fluid.minTemperature(), density));
    }
}
