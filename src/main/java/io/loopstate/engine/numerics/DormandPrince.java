package io.loopstate.engine.numerics;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.function.DoubleBinaryOperator;

/**
 * Solution of one ordinary differential equation dy/dx = f(x, y) with steps chosen from the error of each: the embedded pair
 * of orders 5 and 4 of J. R. Dormand, P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19-26, Table 2. A kink of f, as at the
 * edge of a dome, costs small steps and no accuracy.
 */
public final class DormandPrince {
    private static final int MAX_STEPS = 4000;
    private static final double FIRST_STEP = 0.1;
    private static final double SAFETY = 0.9;
    private static final double MIN_CHANGE = 0.2;
    private static final double MAX_CHANGE = 5;

    private DormandPrince() {}

    /**
     * The value of y at the end.
     *
     * @param slope f(x, y)
     * @param x0 start
     * @param y0 y there
     * @param x1 end, on either side of the start
     * @param tolerance absolute, of y, over the whole way
     * @param name of the iteration, for the error
     */
    public static double integrate(
            DoubleBinaryOperator slope, double x0, double y0, double x1, double tolerance, String name) {
        double length = x1 - x0;
        if (length == 0) {
            return y0;
        }
        double x = x0;
        double y = y0;
        double k1 = slope.applyAsDouble(x, y);
        double h = FIRST_STEP * length;
        for (int step = 0; step < MAX_STEPS; step++) {
            Deadline.check();
            boolean last = Math.abs(h) >= Math.abs(x1 - x) * (1 - 1e-12);
            double dx = last ? x1 - x : h;
            double k2 = slope.applyAsDouble(x + dx / 5, y + dx * k1 / 5);
            double k3 = slope.applyAsDouble(x + 0.3 * dx, y + dx * (3 * k1 + 9 * k2) / 40);
            double k4 = slope.applyAsDouble(x + 0.8 * dx, y + dx * (44 * k1 / 45 - 56 * k2 / 15 + 32 * k3 / 9));
            double k5 = slope.applyAsDouble(
                    x + 8 * dx / 9,
                    y + dx * (19372 * k1 / 6561 - 25360 * k2 / 2187 + 64448 * k3 / 6561 - 212 * k4 / 729));
            double k6 = slope.applyAsDouble(
                    x + dx,
                    y
                            + dx
                                    * (9017 * k1 / 3168
                                            - 355 * k2 / 33
                                            + 46732 * k3 / 5247
                                            + 49 * k4 / 176
                                            - 5103 * k5 / 18656));
            double next = y + dx * (35 * k1 / 384 + 500 * k3 / 1113 + 125 * k4 / 192 - 2187 * k5 / 6784 + 11 * k6 / 84);
            double k7 = slope.applyAsDouble(x + dx, next);
            double error = Math.abs(dx
                    * (71 * k1 / 57600
                            - 71 * k3 / 16695
                            + 71 * k4 / 1920
                            - 17253 * k5 / 339200
                            + 22 * k6 / 525
                            - k7 / 40));
            double allowed = tolerance * Math.abs(dx / length);
            if (error <= allowed) {
                if (last) {
                    return next;
                }
                x += dx;
                y = next;
                k1 = k7;
            }
            double change = error == 0 ? MAX_CHANGE : SAFETY * Math.pow(allowed / error, 0.2);
            h = dx * Math.min(Math.max(change, MIN_CHANGE), MAX_CHANGE);
            if (x + h == x) {
                break;
            }
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, name);
    }
}
