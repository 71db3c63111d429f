package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.numerics.Roots;
import io.loopstate.engine.property.Phase;
import java.util.Optional;

/**
 * States at a pressure and an enthalpy, entropy or internal energy: Newton's method in temperature and density from the
 * edge of the dome; where that does not settle, a bracketed search in temperature at the pressure.
 */
final class PressureCaloric {
    /** Exponent with which the departure of a vapor from the ideal gas fades with temperature; only a starting value. */
    private static final double FADING = 3.5;

    private static final double SMALL_STEP = 1e-6;
    private static final double TOLERANCE = 1e-14;
    private static final double RESIDUAL = 1e-9;
    /** mol/m3; no state above the critical pressure is as thin. */
    private static final double LOWEST_DENSE = 1e-3;

    private PressureCaloric() {}

    static Point solve(FluidModel fluid, double pressure, Caloric caloric, double value) {
        fluid.requirePressure(pressure);
        if (pressure >= fluid.topPressure()) {
            return dense(fluid, pressure, caloric, value);
        }
        if (!fluid.hasSaturation(pressure)) {
            double coldest = fluid.dome().thinVaporTemperature(pressure);
            return search(fluid, pressure, caloric, value, coldest, fluid.maxTemperature(), false);
        }
        Dome.Edges edges = fluid.edgesAtPressure(pressure);
        MolarState liquid = null;
        if (value < caloric.of(fluid.critical())) {
            // most likely liquid, which then costs no state of the vapor
            liquid = Saturated.liquid(fluid, edges);
            if (fluid.saturated(caloric, value - caloric.of(liquid), liquid)) {
                return Saturated.bubble(fluid, edges);
            }
            if (value < caloric.of(liquid)) {
                return subcooled(fluid, edges, pressure, caloric, value, liquid);
            }
        }
        MolarState vapor = Saturated.vapor(fluid, edges);
        if (value > caloric.of(vapor)) {
            return superheated(fluid, edges, pressure, caloric, value, vapor);
        }
        if (liquid == null) {
            liquid = Saturated.liquid(fluid, edges);
            if (value < caloric.of(liquid)) {
                return subcooled(fluid, edges, pressure, caloric, value, liquid);
            }
        }
        Coexistence.Given at = new Coexistence.Given(SplitVariable.PRESSURE, pressure, edges, liquid, vapor);
        return fluid.coexistence().divide(fluid, at, caloric.splitVariable(), value);
    }

    private static Point superheated(
            FluidModel fluid, Dome.Edges edges, double pressure, Caloric caloric, double value, MolarState vapor) {
        double r = fluid.model().gasConstant();
        double t = ahead(caloric, vapor, value);
        double z = pressure / (vapor.density() * r * vapor.temperature());
        double faded = 1 + (z - 1) * Math.pow(vapor.temperature() / t, FADING);
        return newton(fluid, pressure, caloric, value, t, pressure / (faded * r * t), 0, vapor.density())
                .orElseGet(() ->
                        search(fluid, pressure, caloric, value, edges.dewTemperature(), fluid.maxTemperature(), false));
    }

    private static Point subcooled(
            FluidModel fluid, Dome.Edges edges, double pressure, Caloric caloric, double value, MolarState liquid) {
        double tMin = fluid.minTemperature();
        double t = Math.max(ahead(caloric, liquid, value), tMin);
        // the saturated liquid of that temperature, pressed up to this pressure
        Dome.Edges there = fluid.dome().atTemperature(Math.min(t, edges.bubbleTemperature()));
        double start = there.liquidDensity() + (pressure - there.bubblePressure()) / liquid.pressureByDensity();
        return newton(fluid, pressure, caloric, value, t, start, liquid.density(), fluid.maxDensity())
                .orElseGet(() -> search(fluid, pressure, caloric, value, tMin, edges.bubbleTemperature(), true));
    }

    /** Temperature at the value with the heat capacity of the state given. */
    private static double ahead(Caloric caloric, MolarState from, double value) {
        double slope = caloric.byTemperatureAtPressure(from);
        double t = from.temperature();
        return caloric == Caloric.ENTROPY
                ? t * Math.exp((value - from.entropy()) / (slope * t))
                : t + (value - caloric.of(from)) / slope;
    }

    /** Above the critical pressure. */
    private static Point dense(FluidModel fluid, double pressure, Caloric caloric, double value) {
        IsobarStarts.Start start = fluid.starts().near(fluid, pressure, caloric, value);
        return newton(
                        fluid,
                        pressure,
                        caloric,
                        value,
                        start.temperature(),
                        start.density(),
                        LOWEST_DENSE,
                        fluid.maxDensity())
                .orElseGet(() ->
                        search(fluid, pressure, caloric, value, fluid.minTemperature(), fluid.maxTemperature(), true));
    }

    private static Optional<Point> newton(
            FluidModel fluid,
            double pressure,
            Caloric caloric,
            double value,
            double t,
            double rho,
            double minDensity,
            double maxDensity) {
        PlaneNewton.Conditions conditions = new PlaneNewton.Conditions() {
            @Override
            public PlaneNewton.Condition first(MolarState s) {
                return new PlaneNewton.Condition(
                        s.pressure() - pressure, s.pressureByTemperature(), s.pressureByDensity());
            }

            @Override
            public PlaneNewton.Condition second(MolarState s) {
                return new PlaneNewton.Condition(caloric.of(s) - value, caloric.byTemperature(s), caloric.byDensity(s));
            }
        };
        return PlaneNewton.solve(fluid, conditions, t, rho, minDensity, maxDensity, SMALL_STEP)
                .filter(s -> satisfies(fluid, s, pressure, caloric, value))
                .map(s -> onePhase(fluid, s, pressure, minDensity > 0));
    }

    /** The answer is checked against its inputs before it leaves. */
    private static boolean satisfies(FluidModel fluid, MolarState s, double pressure, Caloric caloric, double value) {
        double pressureScale = Math.max(pressure, s.density() * s.pressureByDensity());
        return Math.abs(s.pressure() - pressure) <= RESIDUAL * pressureScale
                && Math.abs(caloric.of(s) - value)
                        <= RESIDUAL * caloric.scale(s, fluid.model().gasConstant());
    }

    private static Point onePhase(FluidModel fluid, MolarState s, double pressure, boolean denserThanDome) {
        Phase phase = fluid.phase(s.temperature(), pressure, denserThanDome);
        return new Point.OnePhase(phase, s, pressure);
    }

    /** Along the isobar between two temperatures every caloric property rises with temperature. */
    private static Point search(
            FluidModel fluid,
            double pressure,
            Caloric caloric,
            double value,
            double lower,
            double upper,
            boolean denserThanDome) {
        MolarState coldest = along(fluid, pressure, lower, denserThanDome);
        MolarState hottest = along(fluid, pressure, upper, denserThanDome);
        if (fluid.negligible(caloric, value - caloric.of(coldest), coldest)) {
            return onePhase(fluid, coldest, pressure, denserThanDome);
        }
        if (fluid.negligible(caloric, value - caloric.of(hottest), hottest)) {
            return onePhase(fluid, hottest, pressure, denserThanDome);
        }
        if (value < caloric.of(coldest) || value > caloric.of(hottest)) {
            throw fluid.outOfRange(
                    caloric,
                    value,
                    caloric.of(along(fluid, pressure, fluid.minTemperature(), true)),
                    caloric.of(along(fluid, pressure, fluid.maxTemperature(), false)));
        }
        double t = Roots.newton(
                x -> {
                    MolarState s = along(fluid, pressure, x, denserThanDome);
                    return new Roots.ValueSlope(caloric.of(s) - value, caloric.byTemperatureAtPressure(s));
                },
                lower,
                upper,
                0.5 * (lower + upper),
                TOLERANCE,
                true,
                "search along the isobar");
        return onePhase(fluid, along(fluid, pressure, t, denserThanDome), pressure, denserThanDome);
    }

    /** State of one phase on the isobar; at the end of the range that is the saturation line, the saturated phase. */
    private static MolarState along(FluidModel fluid, double pressure, double t, boolean denserThanDome) {
        var isotherm = fluid.isotherm(t);
        return isotherm.state(PressureTemperature.density(fluid, isotherm, pressure, denserThanDome));
    }
}
