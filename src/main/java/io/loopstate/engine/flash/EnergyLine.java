package io.loopstate.engine.flash;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.RootScan;
import io.loopstate.engine.numerics.Roots;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/**
 * States at an internal energy and another property: every one of them, looked for over density along the line of that
 * internal energy.
 */
final class EnergyLine {
    private static final int CELLS = 64;
    private static final double THINNEST = 1e-12;
    private static final double STEP = 1e-5;
    private static final double END_ROUNDED = 1e-9;

    private static final double SAME = 1e-8;
    private static final int HALVINGS = 50;

    private final FluidModel fluid;
    private final double energy;
    /** How far a point is from the other input, as an energy. */
    private final ToDoubleFunction<Point> excess;

    private EnergyLine(FluidModel fluid, double energy, ToDoubleFunction<Point> excess) {
        this.fluid = fluid;
        this.energy = energy;
        this.excess = excess;
    }

    /**
     * With the enthalpy, by p v = h - u. In a thin gas both inputs depend on temperature alone, and the density is as
     * uncertain as the inputs divided by the gas's departure from the ideal one.
     */
    static List<Point> withEnthalpy(FluidModel fluid, double energy, double enthalpy) {
        double product = enthalpy - energy;
        return product > 0
                ? new EnergyLine(fluid, energy, p -> p.pressure() / p.density() - product).solve()
                : List.of();
    }

    /** With the entropy, which rises with volume along the line: (ds/dv)_u = p/T. */
    static List<Point> withEntropy(FluidModel fluid, double energy, double entropy) {
        return new EnergyLine(fluid, energy, p -> p.temperature() * (Caloric.ENTROPY.of(p) - entropy)).solve();
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

    /** ln rho at even distances, where the line enters and leaves the range, and where it crosses the dome and bends. */
    private SortedSet<Double> nodes() {
        SortedSet<Double> nodes = new TreeSet<>();
        double upper = Math.log(fluid.maxDensity());
        double lower = upper + Math.log(THINNEST);
        for (int i = 0; i <= CELLS; i++) {
            nodes.add(lower + (upper - lower) * i / CELLS);
        }
        List<Point> marks = new ArrayList<>();
        marks.addAll(TemperatureCaloric.solve(fluid, fluid.minTemperature(), Caloric.INTERNAL_ENERGY, energy));
        marks.addAll(TemperatureCaloric.solve(fluid, fluid.maxTemperature(), Caloric.INTERNAL_ENERGY, energy));
        marks.addAll(QualityPair.solve(fluid, 0, Caloric.INTERNAL_ENERGY::of, energy));
        marks.addAll(QualityPair.solve(fluid, 1, Caloric.INTERNAL_ENERGY::of, energy));
        atHighestPressure().ifPresent(marks::add);
        marks.forEach(p -> nodes.add(Math.log(p.density())));
        return nodes;
    }

    private Optional<Point> atHighestPressure() {
        return ifInRange(() -> PressureCaloric.solve(fluid, fluid.maxPressure(), Caloric.INTERNAL_ENERGY, energy));
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
        RootScan.roots(
                        x -> residual(x, left, right),
                        new double[] {left, right},
                        "density along the line of internal energy")
                .forEach(x -> at(x).ifPresent(p -> addNew(p, points)));
        addIfRoot(insideA ? right : left, points);
    }

    /** The end of the range, where the flash below takes states a little beyond as the end. */
    private void addIfRoot(double x, List<Point> points) {
        at(x).filter(p -> Math.abs(excess.applyAsDouble(p))
                        <= END_ROUNDED * fluid.model().gasConstant() * p.temperature())
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

    private Roots.ValueSlope residual(double x, double left, double right) {
        double ahead = Math.min(x + STEP, right);
        double behind = Math.max(ahead - STEP, left);
        return new Roots.ValueSlope(excessAt(x), (excessAt(ahead) - excessAt(behind)) / (ahead - behind));
    }

    private double excessAt(double x) {
        return at(x).map(excess::applyAsDouble).orElse(Double.NaN);
    }

    private Optional<Point> at(double x) {
        return ifInRange(() -> DensityCaloric.solve(fluid, Math.exp(x), Caloric.INTERNAL_ENERGY, energy));
    }

    private static Optional<Point> ifInRange(Supplier<Point> flash) {
        try {
            return Optional.of(flash.get());
        } catch (EngineException e) {
            if (e.code() == ErrorCode.OUT_OF_RANGE) {
                return Optional.empty();
            }
            throw e;
        }
    }
}
