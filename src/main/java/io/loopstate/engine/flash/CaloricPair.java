package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.Optional;

/**
 * States at an entropy and an enthalpy or internal energy. Along an isentrope both rise with pressure ((dh/dp)_s = v,
 * (du/dp)_s = p/(rho w)^2), through the dome and outside, so there is one state: a bracketed Newton iteration in ln p, left
 * for Newton's method in temperature and density as soon as one phase is reached.
 */
final class CaloricPair {
    private static final int MAX_ITERATIONS = 100;
    private static final double TOLERANCE = 1e-14;
    /** Start at this share of the critical pressure, in the middle of the range of refrigeration. */
    private static final double START = 0.2;

    private static final double LOWEST_PRESSURE = 1e-12;
    private static final double RESIDUAL = 1e-9;

    private CaloricPair() {}

    /** @param caloric enthalpy or internal energy */
    static Point solve(FluidModel fluid, double entropy, Caloric caloric, double value) {
        double lo = Math.log(fluid.criticalPressure() * LOWEST_PRESSURE);
        double hi = Math.log(fluid.maxPressure());
        double x = Math.log(Math.min(fluid.criticalPressure() * START, fluid.maxPressure()));
        boolean everAnswered = false;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            Optional<Point> at = isentrope(fluid, Math.exp(x), entropy);
            if (at.isEmpty()) {
                // the isentrope leaves the range of temperature: cold at low pressure, hot at high pressure
                if (tooCold(fluid, Math.exp(x), entropy)) {
                    lo = x;
                } else {
                    hi = x;
                }
                x = 0.5 * (lo + hi);
                if (hi - lo < TOLERANCE * Math.abs(x)) {
                    break;
                }
                continue;
            }
            everAnswered = true;
            Point point = at.get();
            double residual = caloric.of(point) - value;
            double slope = slope(caloric, point);
            if (point instanceof Point.OnePhase one && !Double.isNaN(one.state().entropy())) {
                Optional<Point> settled = newton(fluid, one.state(), entropy, caloric, value, residual);
                if (settled.isPresent()) {
                    return settled.get();
                }
            }
            if (residual < 0) {
                lo = x;
            } else {
                hi = x;
            }
            double next = x - residual / slope;
            if (!(next > lo && next < hi)) {
                next = 0.5 * (lo + hi);
            }
            if (residual == 0 || Math.abs(next - x) <= TOLERANCE * Math.abs(x)) {
                return isentrope(fluid, Math.exp(next), entropy)
                        .filter(p -> matches(fluid, p, caloric, value))
                        .orElseThrow(() -> none(fluid));
            }
            x = next;
        }
        throw everAnswered
                ? none(fluid)
                : EngineException.of(
                        ErrorCode.NO_SUCH_STATE,
                        "no state of " + fluid.fluid().designation() + " in range has this entropy");
    }

    private static EngineException none(FluidModel fluid) {
        return EngineException.of(
                ErrorCode.NO_SUCH_STATE,
                "no state of " + fluid.fluid().designation() + " in the range of its equation satisfies both inputs");
    }

    private static boolean matches(FluidModel fluid, Point point, Caloric caloric, double value) {
        return Math.abs(caloric.of(point) - value) <= RESIDUAL * fluid.model().gasConstant() * point.temperature();
    }

    private static Optional<Point> isentrope(FluidModel fluid, double pressure, double entropy) {
        try {
            return Optional.of(PressureCaloric.solve(fluid, pressure, Caloric.ENTROPY, entropy));
        } catch (EngineException e) {
            if (e.code() == ErrorCode.OUT_OF_RANGE) {
                return Optional.empty();
            }
            throw e;
        }
    }

    private static boolean tooCold(FluidModel fluid, double pressure, double entropy) {
        var isotherm = fluid.isotherm(fluid.maxTemperature());
        return entropy
                < isotherm.state(PressureTemperature.density(fluid, isotherm, pressure))
                        .entropy();
    }

    /** d/dln p along the isentrope. */
    private static double slope(Caloric caloric, Point point) {
        double pv = point.pressure() / point.density();
        if (caloric == Caloric.ENTHALPY) {
            return pv;
        }
        if (point instanceof Point.OnePhase one) {
            MolarState s = one.state();
            double stiffness =
                    s.density() * s.pressureByDensity() * s.isobaricHeatCapacity() / s.isochoricHeatCapacity();
            return pv * point.pressure() / stiffness;
        }
        return 0.8 * pv;
    }

    /** From a state on the isentrope, the one at the other condition, started as if the gas were perfect. */
    private static Optional<Point> newton(
            FluidModel fluid, MolarState from, double entropy, Caloric caloric, double value, double residual) {
        double kappa = from.density()
                * from.pressureByDensity()
                * from.isobaricHeatCapacity()
                / from.isochoricHeatCapacity()
                / from.pressure();
        double warming = from.pressureByTemperature() / (from.density() * from.isochoricHeatCapacity());
        double pv = from.pressure() / from.density();
        double factor = caloric == Caloric.ENTHALPY ? (kappa - 1) / kappa : kappa - 1;
        double ratio = 1 - residual * factor / pv;
        if (!(ratio > 0.01)) {
            return Optional.empty();
        }
        double compression = Math.pow(ratio, 1 / (kappa - 1));
        double density = from.density() * compression;
        double temperature = from.temperature() * Math.pow(compression, warming);
        PlaneNewton.Conditions conditions = new PlaneNewton.Conditions() {
            @Override
            public PlaneNewton.Condition first(MolarState s) {
                return condition(Caloric.ENTROPY, s, entropy);
            }

            @Override
            public PlaneNewton.Condition second(MolarState s) {
                return condition(caloric, s, value);
            }
        };
        return PlaneNewton.solve(fluid, conditions, temperature, density, 0, fluid.maxDensity())
                .flatMap(s -> stable(fluid, s));
    }

    private static PlaneNewton.Condition condition(Caloric caloric, MolarState s, double value) {
        return new PlaneNewton.Condition(caloric.of(s) - value, caloric.byTemperature(s), caloric.byDensity(s));
    }

    private static Optional<Point> stable(FluidModel fluid, MolarState s) {
        if (s.temperature() < fluid.criticalTemperature()) {
            Dome.Edges edges = fluid.dome().atTemperature(s.temperature());
            if (s.density() < edges.liquidDensity() && s.density() > edges.vaporDensity()) {
                return Optional.empty();
            }
        }
        if (!(s.pressure() > 0)) {
            return Optional.empty();
        }
        fluid.requireInRange(s);
        boolean dense = s.density() > fluid.fluid().criticalMolarDensity();
        return Optional.of(new Point.OnePhase(fluid.phase(s.temperature(), s.pressure(), dense), s, s.pressure()));
    }
}
