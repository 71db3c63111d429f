package io.loopstate.engine.numerics;

import io.loopstate.engine.numerics.Roots.ValueSlope;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Every root of a smooth function on an interval, by its values and slopes at given nodes. */
public final class RootScan {
    private static final double TOLERANCE = 1e-15;
    private static final double EXTREMUM_TOLERANCE = 1e-10;
    /** A root this close outside an end, relative to it, is that end: the inputs were rounded. */
    private static final double AT_THE_END = 1e-10;

    private RootScan() {}

    /** Nodes that lie densest at the lower end, in cells whose widths rise linearly. */
    public static double[] clustered(double lower, double upper, int cells) {
        double[] nodes = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            double share = (double) i / cells;
            nodes[i] = i == cells ? upper : lower + (upper - lower) * share * share;
        }
        return nodes;
    }

    /**
     * Roots, those at the ends last. In each cell there may be one root with a change of sign, or two around an extremum that
     * the slopes at the ends give away.
     *
     * @param nodes ascending
     * @param name of the iteration, for the error
     */
    public static List<Double> roots(DoubleFunction<ValueSlope> function, double[] nodes, String name) {
        List<Double> found = new ArrayList<>();
        double a = nodes[0];
        ValueSlope fa = function.apply(a);
        if (fa.value() == 0) {
            found.add(a);
        }
        for (int i = 1; i < nodes.length; i++) {
            double b = nodes[i];
            ValueSlope fb = function.apply(b);
            if (fb.value() == 0) {
                found.add(b);
            } else if (fa.value() != 0) {
                addCell(function, a, fa, b, fb, name, found);
            }
            a = b;
            fa = fb;
        }
        addEnd(nodes[0], function, found);
        addEnd(nodes[nodes.length - 1], function, found);
        return found;
    }

    private static void addEnd(double end, DoubleFunction<ValueSlope> function, List<Double> found) {
        double near = AT_THE_END * Math.abs(end);
        ValueSlope f = function.apply(end);
        if (Math.abs(f.value()) <= near * Math.abs(f.slope())
                && found.stream().noneMatch(x -> Math.abs(x - end) <= 10 * near)) {
            found.add(end);
        }
    }

    private static void addCell(
            DoubleFunction<ValueSlope> function,
            double a,
            ValueSlope fa,
            double b,
            ValueSlope fb,
            String name,
            List<Double> found) {
        if (fa.value() < 0 != fb.value() < 0) {
            found.add(refine(function, a, fa, b, name));
            return;
        }
        boolean towardZeroAndBack = fa.value() * fa.slope() < 0 && fb.value() * fb.slope() > 0;
        if (!towardZeroAndBack) {
            return;
        }
        double top = Roots.brent(x -> function.apply(x).slope(), a, b, EXTREMUM_TOLERANCE, name + " (extremum)");
        ValueSlope ft = function.apply(top);
        if (ft.value() < 0 != fa.value() < 0) {
            found.add(refine(function, a, fa, top, name));
            found.add(refine(function, top, ft, b, name));
        }
    }

    private static double refine(DoubleFunction<ValueSlope> function, double a, ValueSlope fa, double b, String name) {
        return Roots.newton(function, a, b, 0.5 * (a + b), TOLERANCE, fa.value() < 0, name);
    }
}
