package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.fluid.Refrigerant;

/** Single-phase states at a pressure and a temperature. */
final class PressureTemperature {
    /** Relative distance from the saturation pressure within which the phase cannot be told. */
    private static final double ON_THE_LINE = 1e-10;
    /** The bracket reaches past the dome by this much, so that rounding of the edge does not cut off the root. */
    private static final double OVERLAP = 1e-7;

    private PressureTemperature() {}

    static Point solve(FluidModel fluid, double pressure, double temperature) {
        fluid.requireTemperature(temperature);
        fluid.requirePressure(pressure);
        if (temperature >= fluid.topTemperature() || pressure >= fluid.topPressure()) {
            return onePhase(fluid, pressure, temperature, temperature < fluid.topTemperature());
        }
        Dome.Edges edges = fluid.dome().atTemperature(temperature);
        boolean onBubbleLine = Math.abs(pressure / edges.bubblePressure() - 1) <= ON_THE_LINE;
        boolean onDewLine = Math.abs(pressure / edges.dewPressure() - 1) <= ON_THE_LINE;
        if (onBubbleLine || onDewLine) {
            return fluid.coexistence().onLine(fluid, pressure, edges, onBubbleLine);
        }
        if (pressure > edges.dewPressure() && pressure < edges.bubblePressure()) {
            return Saturated.between(
                    fluid,
                    SplitVariable.PRESSURE,
                    pressure,
                    fluid.edgesAtPressure(pressure),
                    SplitVariable.TEMPERATURE,
                    temperature);
        }
        return onePhase(fluid, pressure, temperature, pressure > edges.bubblePressure());
    }

    private static Point onePhase(FluidModel fluid, double pressure, double temperature, boolean dense) {
        Isotherm isotherm = fluid.isotherm(temperature);
        double density = density(fluid, isotherm, pressure, dense);
        return new Point.OnePhase(fluid.phase(temperature, pressure, dense), isotherm.state(density), pressure);
    }

    /** Density (mol/m3) of the stable phase, without checks of the range or of the saturation line. */
    static double density(FluidModel fluid, Isotherm isotherm, double pressure) {
        double t = isotherm.temperature();
        boolean dense = t < fluid.topTemperature()
                && pressure > fluid.dome().atTemperature(t).bubblePressure();
        return density(fluid, isotherm, pressure, dense);
    }

    /**
     * Density (mol/m3) of one phase at or next to its own side of the dome.
     *
     * @param denserThanDome which side, below the critical temperature
     */
    static double density(FluidModel fluid, Isotherm isotherm, double pressure, boolean denserThanDome) {
        double t = isotherm.temperature();
        if (t >= fluid.topTemperature()) {
            double start = gasGuess(fluid.fluid(), fluid.model().gasConstant() * t, t, pressure);
            return DensitySolver.solve(isotherm, pressure, 0, fluid.maxDensity(), start);
        }
        Dome.Edges edges = fluid.dome().atTemperature(t);
        return denserThanDome
                ? liquid(fluid, isotherm, pressure, edges.liquidDensity())
                : vapor(fluid, isotherm, pressure, edges);
    }

    /** Murnaghan (1944): the bulk modulus rises linearly with pressure. */
    private static double liquid(FluidModel fluid, Isotherm isotherm, double pressure, double saturated) {
        Isotherm.Pressure p = isotherm.pressure(saturated);
        double modulus = saturated * p.slope();
        double rise = 1 + saturated * p.curvature() / p.slope();
        double compression = 1 + rise * (pressure - p.value()) / modulus;
        double start = saturated * Math.pow(compression, 1 / rise);
        return DensitySolver.solve(isotherm, pressure, saturated * (1 - OVERLAP), fluid.maxDensity(), start);
    }

    /** The compressibility factor falls about linearly with pressure from 1 to that of the saturated vapor. */
    private static double vapor(FluidModel fluid, Isotherm isotherm, double pressure, Dome.Edges edges) {
        double rt = fluid.model().gasConstant() * isotherm.temperature();
        double saturated = edges.dewPressure() / (edges.vaporDensity() * rt);
        double z = 1 + (saturated - 1) * pressure / edges.dewPressure();
        return DensitySolver.solve(isotherm, pressure, 0, edges.vaporDensity() * (1 + OVERLAP), pressure / (z * rt));
    }

    /** Peng and Robinson (1976), eqs. 4-15: their cubic equation of state, a starting value above the critical point. */
    private static double gasGuess(Refrigerant fluid, double rt, double t, double pressure) {
        double tc = fluid.criticalPoint().temperature();
        double pc = fluid.criticalPoint().pressure();
        double omega = fluid.acentricFactor();
        double kappa = 0.37464 + omega * (1.54226 - 0.26992 * omega);
        double root = 1 + kappa * (1 - Math.sqrt(t / tc));
        double r = rt / t;
        double a = 0.45724 * r * r * tc * tc / pc * root * root * pressure / (rt * rt);
        double b = 0.07780 * r * tc / pc * pressure / rt;
        return pressure / (rt * largestRoot(b - 1, a - 3 * b * b - 2 * b, -a * b + b * b + b * b * b));
    }

    /** Largest real root of z^3 + c2 z^2 + c1 z + c0. */
    private static double largestRoot(double c2, double c1, double c0) {
        double q = (c2 * c2 - 3 * c1) / 9;
        double r = (c2 * (2 * c2 * c2 - 9 * c1) + 27 * c0) / 54;
        if (r * r < q * q * q) {
            double theta = Math.acos(r / Math.sqrt(q * q * q));
            return -2 * Math.sqrt(q) * Math.cos((theta + 2 * Math.PI) / 3) - c2 / 3;
        }
        double s = -Math.copySign(Math.cbrt(Math.abs(r) + Math.sqrt(r * r - q * q * q)), r);
        return s + (s == 0 ? 0 : q / s) - c2 / 3;
    }
}
