package io.loopstate.engine.flash;

import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.numerics.RootScan;
import io.loopstate.engine.numerics.Roots;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * States at an energy and another property: every one of them, looked for along the line of that energy, over pressure or
 * density.
 */
final class CaloricLine {
    private static final int CELLS = 64;
    private static final double THINNEST = 1e-12;
    private static final double STEP = 1e-5;
    private static final double END_ROUNDED = 1e-9;

    private static final double SAME = 1e-8;
    private static final int HALVINGS = 50;

    private final FluidModel fluid;
    private final Caloric caloric;
    private final double value;
    /** What is gone along, at its highest. */
    private final double highest;
    /** Whether it is pressure, along which h - u is p v, and T ds = p dv along an internal energy. */
    private final boolean overPressure;

    private final ToDoubleFunction<Point> coordinate;
    private final DoubleFunction<Point> flash;
    /** How far a point is from the other input, as an energy. */
    private final ToDoubleFunction<Point> excess;

    private final Gaps gaps = new Gaps();

    private final Map<Double, Optional<Point>> known = new HashMap<>();

    private CaloricLine(
            FluidModel fluid,
            Caloric caloric,
            double value,
            double highest,
            boolean overPressure,
            ToDoubleFunction<Point> coordinate,
            DoubleFunction<Point> flash,
            ToDoubleFunction<Point> excess) {
        this.fluid = fluid;
        this.caloric = caloric;
        this.value = value;
        this.highest = highest;
        this.overPressure = overPressure;
        this.coordinate = coordinate;
        this.flash = flash;
        this.excess = excess;
    }

    /**
     * At an enthalpy and an internal energy, by p v = h - u. In a thin gas both inputs depend on temperature alone, and the
     * density is as uncertain as the inputs divided by the gas's departure from the ideal one. A blend is found at a pressure
     * in a tenth of the time that a density takes.
     */
    static List<Point> atEnthalpy(FluidModel fluid, double enthalpy, double energy) {
        double product = enthalpy - energy;
        if (product <= 0 || product > highestProduct(fluid) * (1 + END_ROUNDED)) {
            return List.of();
        }
        CaloricLine line = fluid.fluid() instanceof Blend
                ? overPressure(fluid, Caloric.ENTHALPY, enthalpy, point -> Caloric.INTERNAL_ENERGY.of(point) - energy)
                : overDensity(
                        fluid, Caloric.INTERNAL_ENERGY, energy, point -> point.pressure() / point.density() - product);
        return line.solve();
    }

    /**
     * Largest product of pressure and molar volume in the range: volume rises with temperature, and along the hottest
     * isotherm the compressibility factor has a minimum at most, so that its larger end is the largest.
     */
    static double highestProduct(FluidModel fluid) {
        var hottest = fluid.isotherm(fluid.maxTemperature());
        double thin = fluid.model().gasConstant() * fluid.maxTemperature();
        double dense = fluid.maxPressure() / PressureTemperature.density(fluid, hottest, fluid.maxPressure());
        return Math.max(thin, dense);
    }

    /** At an internal energy and an entropy, which rises with volume along the line: (ds/dv)_u = p/T. */
    static List<Point> atEnergy(FluidModel fluid, double energy, double entropy) {
        ToDoubleFunction<Point> excess = point -> point.temperature() * (Caloric.ENTROPY.of(point) - entropy);
        return (fluid.fluid() instanceof Blend
                        ? overPressure(fluid, Caloric.INTERNAL_ENERGY, energy, excess)
                        : overDensity(fluid, Caloric.INTERNAL_ENERGY, energy, excess))
                .solve();
    }

    private static CaloricLine overPressure(
            FluidModel fluid, Caloric caloric, double value, ToDoubleFunction<Point> excess) {
        return new CaloricLine(
                fluid,
                caloric,
                value,
                fluid.maxPressure(),
                true,
                Point::pressure,
                p -> PressureCaloric.solve(fluid, p, caloric, value),
                excess);
    }

    private static CaloricLine overDensity(
            FluidModel fluid, Caloric caloric, double value, ToDoubleFunction<Point> excess) {
        return new CaloricLine(
                fluid,
                caloric,
                value,
                fluid.maxDensity(),
                false,
                Point::density,
                rho -> DensityCaloric.solve(fluid, rho, caloric, value),
                excess);
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
        if (points.isEmpty() && gaps.first().isPresent()) {
            throw gaps.first().get();
        }
        return points;
    }

    /** Logarithms at even distances, where the line enters and leaves the range, and where it crosses the dome and bends. */
    private SortedSet<Double> nodes() {
        SortedSet<Double> nodes = new TreeSet<>();
        double upper = Math.log(highest);
        double lower = upper + Math.log(THINNEST);
        for (int i = 0; i <= CELLS; i++) {
            nodes.add(lower + (upper - lower) * i / CELLS);
        }
        Stream.<Supplier<List<Point>>>of(
                        () -> TemperatureCaloric.solve(fluid, fluid.minTemperature(), caloric, value),
                        () -> TemperatureCaloric.solve(fluid, fluid.maxTemperature(), caloric, value),
                        () -> QualityPair.solve(fluid, 0, caloric::of, value),
                        () -> QualityPair.solve(fluid, 1, caloric::of, value),
                        () -> List.of(PressureCaloric.solve(fluid, fluid.maxPressure(), caloric, value)))
                .flatMap(marks -> gaps.ifComputed(marks).stream().flatMap(List::stream))
                .forEach(p -> nodes.add(Math.log(coordinate.applyAsDouble(p))));
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
        if (excessAt(left) * excessAt(right) > 0 && !mayMeet(left, right - left) && !mayMeet(right, right - left)) {
            return;
        }
        RootScan.roots(x -> residual(x, left, right), new double[] {left, right}, "states along the line of an energy")
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
        for (int k = 0; k < HALVINGS && mayMeet(in, Math.abs(in - out)); k++) {
            double middle = 0.5 * (out + in);
            if (at(middle).isPresent()) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }

    /** Whether the other input may be met less than a width away from a point. */
    private boolean mayMeet(double x, double width) {
        Point point = at(x).orElseThrow();
        return !overPressure || !(Math.abs(excess.applyAsDouble(point)) > fluid.reach(point, width));
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
        return known.computeIfAbsent(x, key -> gaps.ifComputed(() -> flash.apply(Math.exp(key))));
    }
}
