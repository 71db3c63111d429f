package io.loopstate.engine.flash;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Roots;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * States at an enthalpy and an internal energy, so that p v = h - u is known: followed along the line of that p v over
 * pressure. In a thin gas both depend on temperature alone, and the density is as uncertain as the inputs divided by the gas's
 * departure from the ideal one.
 */
final class EnthalpyEnergy {
    private static final int CELLS = 96;
    private static final double LOWEST_PRESSURE = 1e-9;
    private static final double TOLERANCE = 1e-15;
    private static final int HALVINGS = 45;

    private EnthalpyEnergy() {}

    static List<Point> solve(FluidModel fluid, double enthalpy, double energy) {
        double product = enthalpy - energy;
        List<Point> points = new ArrayList<>();
        if (!(product > 0)) {
            return points;
        }
        double lower = Math.log(fluid.criticalPressure() * LOWEST_PRESSURE);
        double upper = Math.log(fluid.maxPressure());
        double previous = Double.NaN;
        double previousX = lower;
        for (int i = 0; i <= CELLS; i++) {
            double x = lower + (upper - lower) * i / CELLS;
            double value = residual(fluid, product, enthalpy, x);
            if (i > 0) {
                addCell(fluid, product, enthalpy, previousX, previous, x, value, points);
            }
            previous = value;
            previousX = x;
        }
        return points;
    }

    /** A cell half outside the range is first cut where the range ends. */
    private static void addCell(
            FluidModel fluid,
            double product,
            double enthalpy,
            double a,
            double fa,
            double b,
            double fb,
            List<Point> points) {
        if (Double.isNaN(fa) && Double.isNaN(fb)) {
            return;
        }
        double left = Double.isNaN(fa) ? edge(fluid, product, enthalpy, a, b) : a;
        double right = Double.isNaN(fb) ? edge(fluid, product, enthalpy, b, a) : b;
        double atLeft = residual(fluid, product, enthalpy, left);
        double atRight = residual(fluid, product, enthalpy, right);
        if (atLeft < 0 != atRight < 0) {
            double x = Roots.brent(
                    y -> residual(fluid, product, enthalpy, y), left, right, TOLERANCE, "pressure along p v = h - u");
            at(fluid, product, x).ifPresent(points::add);
        }
    }

    private static double edge(FluidModel fluid, double product, double enthalpy, double outside, double inside) {
        double out = outside;
        double in = inside;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = 0.5 * (out + in);
            if (Double.isNaN(residual(fluid, product, enthalpy, middle))) {
                out = middle;
            } else {
                in = middle;
            }
        }
        return in;
    }

    private static double residual(FluidModel fluid, double product, double enthalpy, double x) {
        return at(fluid, product, x)
                .map(point -> Caloric.ENTHALPY.of(point) - enthalpy)
                .orElse(Double.NaN);
    }

    private static Optional<Point> at(FluidModel fluid, double product, double x) {
        double pressure = Math.exp(x);
        try {
            List<Point> found = PressureDensity.solve(fluid, pressure, pressure / product);
            return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
        } catch (EngineException e) {
            if (e.code() == ErrorCode.OUT_OF_RANGE) {
                return Optional.empty();
            }
            throw e;
        }
    }
}
