package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.numerics.RootScan;
import io.loopstate.engine.numerics.Roots;
import java.util.ArrayList;
import java.util.List;

/**
 * States at a temperature and an enthalpy, entropy or internal energy: every one of them. Along an isotherm enthalpy and
 * internal energy pass through a minimum in the dense fluid, and the entropy of liquid water through a maximum near 4 degC,
 * so that a mixture and a compressed liquid, or two dense states, can share one value.
 */
final class TemperatureCaloric {
    private static final int CELLS = 20;
    /** Lowest density looked at, as a share of the highest: there the gas is ideal to the last digit. */
    private static final double THINNEST = 1e-13;

    private static final double SAME = 1e-8;
    private static final double TOLERANCE = 1e-15;
    private static final double RESIDUAL = 1e-9;

    private TemperatureCaloric() {}

    static List<Point> solve(FluidModel fluid, double temperature, Caloric caloric, double value) {
        fluid.requireTemperature(temperature);
        Isotherm isotherm = fluid.isotherm(temperature);
        if (caloric == Caloric.ENTROPY && !fluid.densityMaximum()) {
            return entropy(fluid, isotherm, value);
        }
        double densest = PressureTemperature.density(fluid, isotherm, fluid.maxPressure());
        List<Point> points = new ArrayList<>();
        if (temperature >= fluid.topTemperature()) {
            addBranch(fluid, isotherm, caloric, value, densest * THINNEST, densest, false, points);
            return points;
        }
        Dome.Edges edges = fluid.dome().atTemperature(temperature);
        MolarState liquid = isotherm.state(edges.liquidDensity());
        MolarState vapor = isotherm.state(edges.vaporDensity());
        double quality = (value - caloric.of(liquid)) / (caloric.of(vapor) - caloric.of(liquid));
        if (quality >= 0 && quality <= 1) {
            points.add(inside(fluid, temperature, edges, liquid, vapor, caloric, value));
        }
        addBranch(
                fluid, isotherm, caloric, value, edges.vaporDensity() * THINNEST, edges.vaporDensity(), false, points);
        addBranch(fluid, isotherm, caloric, value, edges.liquidDensity(), densest, true, points);
        return points;
    }

    private static Point inside(
            FluidModel fluid,
            double temperature,
            Dome.Edges edges,
            MolarState liquid,
            MolarState vapor,
            Caloric caloric,
            double value) {
        Coexistence.Given at = new Coexistence.Given(SplitVariable.TEMPERATURE, temperature, edges, liquid, vapor);
        return fluid.coexistence().divide(fluid, at, caloric.splitVariable(), value);
    }

    /** Entropy falls with density all along an isotherm, so that there is one state: Newton's method in ln rho. */
    private static List<Point> entropy(FluidModel fluid, Isotherm isotherm, double value) {
        double temperature = isotherm.temperature();
        double lower = fluid.maxDensity() * THINNEST;
        double upper = fluid.maxDensity();
        double from = fluid.fluid().criticalMolarDensity();
        boolean dense = false;
        if (temperature < fluid.topTemperature()) {
            Dome.Edges edges = fluid.dome().atTemperature(temperature);
            MolarState liquid = isotherm.state(edges.liquidDensity());
            MolarState vapor = isotherm.state(edges.vaporDensity());
            double quality = (value - liquid.entropy()) / (vapor.entropy() - liquid.entropy());
            if (quality >= 0 && quality <= 1) {
                return List.of(inside(fluid, temperature, edges, liquid, vapor, Caloric.ENTROPY, value));
            }
            dense = quality < 0;
            lower = dense ? edges.liquidDensity() : lower;
            upper = dense ? upper : edges.vaporDensity();
            from = dense ? lower : upper;
        }
        MolarState start = isotherm.state(from);
        if (isotherm.state(lower).entropy() < value) {
            return List.of();
        }
        double slope = Caloric.ENTROPY.byDensity(start) * start.density();
        double x = Roots.newton(
                y -> {
                    MolarState s = isotherm.state(Math.exp(y));
                    return new Roots.ValueSlope(s.entropy() - value, Caloric.ENTROPY.byDensity(s) * s.density());
                },
                Math.log(lower),
                Math.log(upper),
                Math.log(from) + (value - start.entropy()) / slope,
                TOLERANCE,
                false,
                "density along the isotherm");
        MolarState found = isotherm.state(Math.exp(x));
        boolean reached =
                Math.abs(found.entropy() - value) <= RESIDUAL * fluid.model().gasConstant();
        return reached ? List.of(onePhase(fluid, fluid.requireInRange(found), dense)) : List.of();
    }

    private static void addBranch(
            FluidModel fluid,
            Isotherm isotherm,
            Caloric caloric,
            double value,
            double thinnest,
            double densest,
            boolean dense,
            List<Point> points) {
        double[] nodes = logarithms(RootScan.clustered(thinnest, densest, CELLS));
        RootScan.roots(
                        x -> {
                            MolarState s = isotherm.state(Math.exp(x));
                            return new Roots.ValueSlope(caloric.of(s) - value, caloric.byDensity(s) * s.density());
                        },
                        nodes,
                        "density along the isotherm")
                .stream()
                .map(x -> onePhase(fluid, isotherm.state(Math.exp(x)), dense))
                .filter(p -> points.stream().noneMatch(other -> same(p, other)))
                .forEach(points::add);
    }

    /** A saturated state is found from both sides of the edge of the dome. */
    private static boolean same(Point a, Point b) {
        return Math.abs(a.density() / b.density() - 1) < SAME;
    }

    private static double[] logarithms(double[] nodes) {
        double[] logs = new double[nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            logs[i] = Math.log(nodes[i]);
        }
        return logs;
    }

    private static Point onePhase(FluidModel fluid, MolarState s, boolean dense) {
        return new Point.OnePhase(fluid.phase(s.temperature(), s.pressure(), dense), s, s.pressure());
    }
}
