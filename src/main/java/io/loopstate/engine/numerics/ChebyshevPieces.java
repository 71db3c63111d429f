package io.loopstate.engine.numerics;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A function of one variable as Chebyshev series on adjoining intervals, split until each series has converged.
 */
public final class ChebyshevPieces {
    private static final int NODES = 16;
    /** Where rounding of the function hides convergence, halving on would only add intervals. */
    private static final int MOST_HALVINGS = 4;

    /** Ends of the intervals, ascending. */
    private final double[] ends;
    /** Coefficients of interval i at i * NODES. */
    private final double[] coefficients;

    private ChebyshevPieces(double[] ends, double[] coefficients) {
        this.ends = ends;
        this.coefficients = coefficients;
    }

    /**
     * Fits a function.
     *
     * @param tolerance largest share of the last two coefficients of a series in its largest, by which convergence is judged
     */
    public static ChebyshevPieces fit(DoubleUnaryOperator function, double from, double to, double tolerance) {
        List<Double> ends = new ArrayList<>(List.of(from));
        List<double[]> series = new ArrayList<>();
        add(function, from, to, tolerance, MOST_HALVINGS, ends, series);
        return assemble(ends, series);
    }

    /** One interval only, whatever its convergence. */
    public static ChebyshevPieces single(DoubleUnaryOperator function, double from, double to) {
        return assemble(List.of(from, to), List.of(series(function, from, to)));
    }

    /** Two fits side by side: the second starts where the first ends. */
    public ChebyshevPieces then(ChebyshevPieces next) {
        double[] allEnds = new double[ends.length + next.ends.length - 1];
        System.arraycopy(ends, 0, allEnds, 0, ends.length);
        System.arraycopy(next.ends, 1, allEnds, ends.length, next.ends.length - 1);
        double[] all = new double[coefficients.length + next.coefficients.length];
        System.arraycopy(coefficients, 0, all, 0, coefficients.length);
        System.arraycopy(next.coefficients, 0, all, coefficients.length, next.coefficients.length);
        return new ChebyshevPieces(allEnds, all);
    }

    private static ChebyshevPieces assemble(List<Double> ends, List<double[]> series) {
        double[] all = new double[series.size() * NODES];
        for (int i = 0; i < series.size(); i++) {
            System.arraycopy(series.get(i), 0, all, i * NODES, NODES);
        }
        return new ChebyshevPieces(
                ends.stream().mapToDouble(Double::doubleValue).toArray(), all);
    }

    private static void add(
            DoubleUnaryOperator function,
            double from,
            double to,
            double tolerance,
            int halvings,
            List<Double> ends,
            List<double[]> series) {
        double[] c = series(function, from, to);
        if (halvings == 0 || tail(c) <= tolerance) {
            ends.add(to);
            series.add(c);
            return;
        }
        double middle = 0.5 * (from + to);
        add(function, from, middle, tolerance, halvings - 1, ends, series);
        add(function, middle, to, tolerance, halvings - 1, ends, series);
    }

    /** Share of the last two coefficients in the largest. */
    private static double tail(double[] c) {
        double largest = 0;
        for (double value : c) {
            largest = Math.max(largest, Math.abs(value));
        }
        return Math.max(Math.abs(c[NODES - 1]), Math.abs(c[NODES - 2])) / largest;
    }

    /** How far the first interval's series is from convergence: share of its last two coefficients in the largest. */
    public double firstTail() {
        return tail(Arrays.copyOf(coefficients, NODES));
    }

    /** Coefficients of the interpolant at the Chebyshev nodes, by the discrete cosine sum. */
    private static double[] series(DoubleUnaryOperator function, double from, double to) {
        double[] values = new double[NODES];
        for (int k = 0; k < NODES; k++) {
            double node = Math.cos(Math.PI * (k + 0.5) / NODES);
            values[k] = function.applyAsDouble(0.5 * (from + to) + 0.5 * (to - from) * node);
        }
        double[] c = new double[NODES];
        for (int j = 0; j < NODES; j++) {
            double sum = 0;
            for (int k = 0; k < NODES; k++) {
                sum += values[k] * Math.cos(Math.PI * j * (k + 0.5) / NODES);
            }
            c[j] = (j == 0 ? 1.0 : 2.0) / NODES * sum;
        }
        return c;
    }

    /** The derivative, as series on the same intervals. */
    public ChebyshevPieces derivative() {
        double[] slopes = new double[coefficients.length];
        for (int i = 0; i < size(); i++) {
            int base = i * NODES;
            double scale = 2 / (ends[i + 1] - ends[i]);
            double later = 0;
            double latest = 0;
            for (int j = NODES - 1; j > 0; j--) {
                // c'_(j-1) = c'_(j+1) + 2 j c_j
                double next = later + 2 * j * coefficients[base + j];
                slopes[base + j - 1] = scale * (j == 1 ? 0.5 * next : next);
                later = latest;
                latest = next;
            }
        }
        return new ChebyshevPieces(ends, slopes);
    }

    /**
     * Intervals that double in length away from one end, so that each has one accuracy to reach, then halved as {@link #fit}
     * does.
     *
     * @param near the end at which the intervals are shortest
     * @param width of the first interval
     * @param tolerance as for {@link #fit}
     */
    public static ChebyshevPieces graded(
            DoubleUnaryOperator function, double near, double far, double width, double tolerance) {
        if (!(width > 0 && Double.isFinite(far - near))) {
            throw EngineException.of(ErrorCode.NOT_CONVERGED, "series over an interval that has no ends");
        }
        double sign = Math.signum(far - near);
        boolean last = Math.abs(far - near) <= 1.5 * width;
        double middle = last ? far : near + sign * width;
        ChebyshevPieces first = fit(function, Math.min(near, middle), Math.max(near, middle), tolerance);
        if (last) {
            return first;
        }
        ChebyshevPieces rest = graded(function, middle, far, 2 * width, tolerance);
        return sign > 0 ? first.then(rest) : rest.then(first);
    }

    /** Lower end of the first interval. */
    public double from() {
        return ends[0];
    }

    /** Upper end of the last interval. */
    public double to() {
        return ends[ends.length - 1];
    }

    /** Value at x, which is taken to lie between the ends. Clenshaw (1955). */
    public double at(double x) {
        int i = interval(x);
        double z = 2 * (2 * x - ends[i] - ends[i + 1]) / (ends[i + 1] - ends[i]);
        double later = 0;
        double latest = 0;
        int base = i * NODES;
        for (int j = NODES - 1; j > 0; j--) {
            double next = z * latest - later + coefficients[base + j];
            later = latest;
            latest = next;
        }
        return 0.5 * z * latest - later + coefficients[base];
    }

    private int interval(double x) {
        int low = 0;
        int high = ends.length - 2;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (x > ends[middle + 1]) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Number of intervals. */
    public int size() {
        return ends.length - 1;
    }
}
