package io.loopstate.engine.flash;

import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.numerics.ChebyshevPieces;
import io.loopstate.engine.numerics.Roots;
import java.util.function.DoubleUnaryOperator;

/**
 * The saturation line of a pure fluid, represented once from the converged solution of its own equation of state.
 *
 * <p>With x = sqrt(1 - T/Tc), taken positive for the liquid and negative for the vapor, an analytic equation of state has
 * ln(rho/rhoc)/x analytic in x across the critical point, and ln(pc/p)/x^2 analytic and even: Chebyshev series of them
 * converge right up to the critical point, where a solver in double precision cannot go. Equations with non-analytic terms,
 * and those whose critical isotherm is so flat that the series would have to start closer than the solver can go, are
 * followed by ever shorter intervals down to x = 0.002 (1.2 mK below the critical point of R-744), and from there by the
 * power law that continues them.
 *
 * <p>Accuracy against the converged solution, relative, for every fluid of the catalog: 2e-11 in pressure and density, 1e-8
 * in density between 0.1 % below the critical temperature and x = 0.003, 1e-3 closer than that.
 */
final class SaturationCurve implements Dome {
    /** Half-widths of the series around the critical point that are tried, largest first. */
    private static final double[] CENTERS = {0.1, 0.05, 0.025, 0.0125};

    private static final double POWER_LAW_WIDTH = 0.002;

    private final double criticalTemperature;
    private final double criticalPressure;
    private final double criticalDensity;
    private final double minTemperature;
    private final double minPressure;
    /** Half-width of the interval around the critical point on which the power law holds; 0 where there is none. */
    private final double powerLawWidth;

    private final double liquidExponent;
    private final double vaporExponent;
    /** ln(pc/p)/x^2 over x. */
    private final ChebyshevPieces pressure;
    /** ln(rho/rhoc)/x over signed x. */
    private final ChebyshevPieces density;
    /** x^2/ln(pc/p) over ln(pc/p). */
    private final ChebyshevPieces temperature;

    SaturationCurve(Fluid fluid) {
        criticalTemperature = fluid.criticalPoint().temperature();
        criticalPressure = fluid.criticalPoint().pressure();
        criticalDensity = fluid.criticalMolarDensity();
        minTemperature = fluid.minSaturationTemperature();
        SaturationNodes nodes = new SaturationNodes(fluid);
        double end = Math.sqrt(1 - minTemperature / criticalTemperature);
        double center = fluid.model().nonAnalytic() ? 0 : center(nodes);
        boolean steep = center == 0;
        powerLawWidth = steep ? POWER_LAW_WIDTH : 0;
        double edge = steep ? POWER_LAW_WIDTH : center;
        ChebyshevPieces liquid = fit(nodes::density, edge, end);
        ChebyshevPieces vapor = fit(nodes::density, -end, -edge);
        if (steep) {
            liquidExponent = exponent(liquid, edge);
            vaporExponent = exponent(vapor, -edge);
            density = vapor.then(ChebyshevPieces.single(x -> 0, -edge, edge)).then(liquid);
            double constant = nodes.pressure(edge);
            pressure = ChebyshevPieces.single(x -> constant, 0, edge).then(fit(nodes::pressure, edge, end));
        } else {
            liquidExponent = 0;
            vaporExponent = 0;
            density = vapor.then(ChebyshevPieces.single(nodes::density, -edge, edge))
                    .then(liquid);
            pressure = ChebyshevPieces.single(nodes::pressure, -edge, edge).then(fit(nodes::pressure, edge, end));
        }
        double largest = end * end * pressure.at(end);
        DoubleUnaryOperator inverse = q -> 1 / pressure.at(distance(q, end));
        double first = Math.min(edge * edge * pressure.at(edge), largest);
        temperature = ChebyshevPieces.single(inverse, 0, first).then(fit(inverse, first, largest, q -> 1e-13));
        minPressure = criticalPressure * Math.exp(-largest);
    }

    private static ChebyshevPieces fit(DoubleUnaryOperator function, double from, double to) {
        return fit(function, from, to, SaturationCurve::tolerance);
    }

    /** Intervals that double in length from the critical point on, so that each has one accuracy to reach, then halved. */
    private static ChebyshevPieces fit(
            DoubleUnaryOperator function, double from, double to, DoubleUnaryOperator tolerance) {
        double near = Math.min(Math.abs(from), Math.abs(to));
        double far = Math.max(Math.abs(from), Math.abs(to));
        double sign = Math.signum(to + from);
        double middle = Math.min(2 * near, far);
        ChebyshevPieces first = ChebyshevPieces.fit(
                function,
                Math.min(sign * near, sign * middle),
                Math.max(sign * near, sign * middle),
                tolerance.applyAsDouble(near));
        if (middle == far) {
            return first;
        }
        return sign > 0
                ? first.then(fit(function, middle, far, tolerance))
                : fit(function, -far, -middle, tolerance).then(first);
    }

    /** Half-width of the widest converged series around the critical point, 0 where none converges. */
    private static double center(SaturationNodes nodes) {
        for (double width : CENTERS) {
            ChebyshevPieces series = ChebyshevPieces.single(nodes::density, -width, width);
            if (series.firstTail() <= tolerance(0.3 * width)) {
                return width;
            }
        }
        return 0;
    }

    /** The solver's densities are good to a few 1e-15 / x^2, and the series are of those over x. */
    private static double tolerance(double x) {
        return Math.max(1e-13, 2e-15 / Math.abs(x * x * x));
    }

    /** d ln(F) / d ln(x) at the inner end of a series. */
    private static double exponent(ChebyshevPieces series, double x) {
        return Math.log(series.at(2 * x) / series.at(x)) / Math.log(2);
    }

    /** x at which ln(pc/p) = q. */
    private double distance(double q, double end) {
        return Roots.brent(x -> x * x * pressure.at(x) - q, 0, end * (1 + 1e-15), 1e-15, "saturation line by pressure");
    }

    /** ln(rho/rhoc); x negative for the vapor. */
    private double logDensity(double x) {
        if (Math.abs(x) >= powerLawWidth) {
            return x * density.at(x);
        }
        double edge = Math.copySign(powerLawWidth, x);
        return x * density.at(edge) * Math.pow(x / edge, x > 0 ? liquidExponent : vaporExponent);
    }

    @Override
    public Edges atTemperature(double t) {
        double x2 = 1 - t / criticalTemperature;
        double x = Math.sqrt(x2);
        return edges(t, criticalPressure * Math.exp(-x2 * pressure.at(x)), x);
    }

    @Override
    public Edges atPressure(double p) {
        double q = Math.log(criticalPressure / p);
        double x2 = q * temperature.at(q);
        return edges(criticalTemperature * (1 - x2), p, Math.sqrt(x2));
    }

    private Edges edges(double t, double p, double x) {
        double liquid = criticalDensity * Math.exp(logDensity(x));
        double vapor = criticalDensity * Math.exp(logDensity(-x));
        return new Edges(t, p, liquid, t, p, vapor);
    }

    @Override
    public double minPressure() {
        return minPressure;
    }

    @Override
    public double topTemperature() {
        return criticalTemperature;
    }

    @Override
    public double topPressure() {
        return criticalPressure;
    }

    @Override
    public double thinVaporTemperature(double pressure) {
        return minTemperature;
    }
}
