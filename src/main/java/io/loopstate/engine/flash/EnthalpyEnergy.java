package io.loopstate.engine.flash;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Roots;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * States at an enthalpy and an internal energy: every one of them, looked for over density along the line of that internal
 * energy, on which p v = h - u is met. In a thin gas both inputs depend on temperature alone, and the density is as
 * uncertain as the inputs divided by the gas's departure from the ideal one.
 */
final class EnthalpyEnergy {
    private static final int CELLS = 64;
    private static final double THINNEST = 1e-12;
    private static final double TOLERANCE = 1e-15;
    private static final double ROUNDED = 1e-12;
    /** Where the range ends, the flash below takes states this far beyond as the end. */
    private static final double END_ROUNDED = 1e-9;

    private static final double SAME = 1e-8;
    private static final int HALVINGS = 50;

    private final FluidModel fluid;
    private final double energy;
    private final double product;

    private EnthalpyEnergy(FluidModel fluid, double enthalpy, double energy) {
        this.fluid = fluid;
        this.energy = energy;
        this.product = enthalpy - energy;
    }

    static List<Point> solve(FluidModel fluid, double enthalpy, double energy) {
        EnthalpyEnergy line = new EnthalpyEnergy(fluid, enthalpy, energy);
        return line.product > 0 ? line.solve() : List.of();
    }

    private List<Point> solve() {
        List<Point> points = new ArrayList<>();
        double previous = Double.NaN;
        for (double x : nodes()) {
            if (!Double.isNaN(previous)) {
                addCell(previous, x, points);
            }
            previous = x;
        }
        return points;
    }

    /** ln rho at even distances, and where the line crosses the edge of the dome and bends. */
    private SortedSet<Double> nodes() {
        SortedSet<Double> nodes = new TreeSet<>();
        double upper = Math.log(fluid.maxDensity());
        double lower = upper + Math.log(THINNEST);
        for (int i = 0; i <= CELLS; i++) {
            nodes.add(lower + (upper - lower) * i / CELLS);
        }
        for (double quality : new double[] {0, 1}) {
            QualityPair.solve(fluid, quality, Caloric.INTERNAL_ENERGY::of, energy)
                    .forEach(p -> nodes.add(Math.log(p.density())));
        }
        return nodes;
    }

    /** A cell half outside the range is first cut where the range ends. */
    private void addCell(double a, double b, List<Point> points) {
        boolean insideA = at(a).isPresent();
        boolean insideB = at(b).isPresent();
        if (!insideA && !insideB) {
            return;
        }
        double left = insideA ? a : edge(a, b);
        double right = insideB ? b : edge(b, a);
        double atLeft = residual(left);
        double atRight = residual(right);
        addIfRoot(left, atLeft, insideA ? ROUNDED : END_ROUNDED, points);
        if (atLeft < 0 != atRight < 0) {
            double x = Roots.brent(this::residual, left, right, TOLERANCE, "density along the line of internal energy");
            at(x).ifPresent(p -> addNew(p, points));
        }
        addIfRoot(right, atRight, insideB ? ROUNDED : END_ROUNDED, points);
    }

    private void addIfRoot(double x, double residual, double tolerance, List<Point> points) {
        at(x).filter(p -> Math.abs(residual) <= tolerance * fluid.model().gasConstant() * p.temperature())
                .ifPresent(p -> addNew(p, points));
    }

    private static void addNew(Point point, List<Point> points) {
        boolean known = points.stream()
                .anyMatch(p -> Math.abs(p.density() / point.density() - 1) < SAME
                        && Math.abs(p.temperature() / point.temperature() - 1) < SAME);
        if (!known) {
            points.add(point);
        }
    }

    private double edge(double outside, double inside) {
        double out = outside;
        double in = inside;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = 0.5 * (out + in);
            if (at(middle).isPresent()) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }

    private double residual(double x) {
        return at(x).map(p -> p.pressure() / p.density() - product).orElse(Double.NaN);
    }

    private Optional<Point> at(double x) {
        try {
            return Optional.of(DensityCaloric.solve(fluid, Math.exp(x), Caloric.INTERNAL_ENERGY, energy));
        } catch (EngineException e) {
            if (e.code() == ErrorCode.OUT_OF_RANGE) {
                return Optional.empty();
            }
            throw e;
        }
    }
}
