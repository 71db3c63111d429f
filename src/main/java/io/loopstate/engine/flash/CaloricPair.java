package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.Optional;

/**
 * States at an entropy and an enthalpy or internal energy. Along an isentrope both rise with pressure, (dh/dp)_s = v and
 * (du/dp)_s = p / (rho w)^2, inside the dome and outside, so there is one state: a bracketed iteration in ln p, left for
 * Newton's method in temperature and density as soon as one phase is reached.
 */
final class CaloricPair {
    private static final int MAX_ITERATIONS = 100;
    private static final double TOLERANCE = 1e-11;
    /** Start at this share of the critical pressure, in the middle of the range of refrigeration. */
    private static final double START = 0.2;

    private static final double LOWEST_PRESSURE = 1e-12;
    private static final double RESIDUAL = 1e-9;
    /** Entropy and energy of an unloaded liquid are all but the same condition, so that Newton is late to square its error. */
    private static final double SMALL_STEP = 1e-9;

    /** Furthest that one state is carried along the isentrope as if the gas were perfect, as a ratio of pressures. */
    private static final double FURTHEST = 100;

    private final FluidModel fluid;
    private final double entropy;
    private final Caloric caloric;
    private final double value;

    private CaloricPair(FluidModel fluid, double entropy, Caloric caloric, double value) {
        this.fluid = fluid;
        this.entropy = entropy;
        this.caloric = caloric;
        this.value = value;
    }

    /** @param caloric enthalpy or internal energy */
    static Point solve(FluidModel fluid, double entropy, Caloric caloric, double value) {
        return new CaloricPair(fluid, entropy, caloric, value).solve();
    }

    private Point solve() {
        return search().or(this::fromColdest).or(this::alongEnergy).orElseThrow(this::none);
    }

    /** Isentropes of cold water leave the range at both ends within a few pascals. */
    private Optional<Point> fromColdest() {
        Dome.Edges edges = fluid.dome().atTemperature(fluid.minTemperature());
        Point coldest = Saturated.bubble(fluid, edges);
        return newton(coldest, caloric.of(coldest) - value);
    }

    /** Slow but sure, where entropy and energy are all but the same condition. */
    private Optional<Point> alongEnergy() {
        return caloric == Caloric.INTERNAL_ENERGY
                ? CaloricLine.atEnergy(fluid, value, entropy).stream().findFirst()
                : Optional.empty();
    }

    private Optional<Point> search() {
        double lo = Math.log(fluid.criticalPressure() * LOWEST_PRESSURE);
        double hi = Math.log(fluid.maxPressure());
        double x = Math.min(Math.log(fluid.criticalPressure() * START), hi);
        double lastX = Double.NaN;
        double lastResidual = Double.NaN;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            Optional<Point> point = isentrope(Math.exp(x));
            double next = Double.NaN;
            if (point.isEmpty()) {
                // the isentrope leaves the range of temperature at its cold, low end or its hot, high end
                if (beyondHotEnd(Math.exp(x))) {
                    hi = x;
                } else {
                    lo = x;
                }
            } else {
                double residual = caloric.of(point.get()) - value;
                Optional<Point> settled = newton(point.get(), residual);
                if (settled.isPresent()) {
                    return settled;
                }
                if (residual < 0) {
                    lo = x;
                } else {
                    hi = x;
                }
                double slope = caloric == Caloric.ENTHALPY || Double.isNaN(lastX)
                        ? point.get().pressure() / point.get().density()
                        : (residual - lastResidual) / (x - lastX);
                next = x - residual / slope;
                if (residual == 0 || Math.abs(next - x) <= TOLERANCE * Math.max(1, Math.abs(x))) {
                    return isentrope(Math.exp(next)).or(() -> point).filter(this::satisfies);
                }
                lastX = x;
                lastResidual = residual;
            }
            if (hi - lo <= TOLERANCE * Math.max(1, Math.abs(x))) {
                return closest(lo, hi).filter(this::satisfies);
            }
            x = next > lo && next < hi ? next : 0.5 * (lo + hi);
        }
        return Optional.empty();
    }

    /** At the end of the range one side of the last bracket has no state. */
    private Optional<Point> closest(double lo, double hi) {
        return isentrope(Math.exp(lo)).or(() -> isentrope(Math.exp(hi)));
    }

    private boolean satisfies(Point point) {
        return Math.abs(caloric.of(point) - value) <= RESIDUAL * fluid.model().gasConstant() * point.temperature();
    }

    private EngineException none() {
        return EngineException.of(
                ErrorCode.NO_SUCH_STATE,
                "no state of " + fluid.fluid().designation() + " in the range of its equation satisfies both inputs");
    }

    private Optional<Point> isentrope(double pressure) {
        try {
            return Optional.of(PressureCaloric.solve(fluid, pressure, Caloric.ENTROPY, entropy));
        } catch (EngineException e) {
            if (e.code() == ErrorCode.OUT_OF_RANGE) {
                return Optional.empty();
            }
            throw e;
        }
    }

    private boolean beyondHotEnd(double pressure) {
        var isotherm = fluid.isotherm(fluid.maxTemperature());
        double density = PressureTemperature.density(fluid, isotherm, pressure);
        return entropy > isotherm.state(density).entropy();
    }

    /** From a one-phase state on the isentrope, the one at the other condition, started as if the gas were perfect. */
    private Optional<Point> newton(Point point, double residual) {
        if (!(point instanceof Point.OnePhase one)) {
            return Optional.empty();
        }
        MolarState from = one.state();
        double bulk =
                from.density() * from.pressureByDensity() * from.isobaricHeatCapacity() / from.isochoricHeatCapacity();
        double kappa = bulk / from.pressure();
        double pv = from.pressure() / from.density();
        double factor = caloric == Caloric.ENTHALPY ? (kappa - 1) / kappa : kappa - 1;
        double compression = Math.pow(1 - residual * factor / pv, 1 / (kappa - 1));
        if (!(Math.abs(Math.log(compression)) * kappa < Math.log(FURTHEST))) {
            return Optional.empty();
        }
        double warming = from.pressureByTemperature() / (from.density() * from.isochoricHeatCapacity());
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
        return PlaneNewton.solve(
                        fluid,
                        conditions,
                        from.temperature() * Math.pow(compression, warming),
                        from.density() * compression,
                        0,
                        fluid.maxDensity(),
                        SMALL_STEP)
                .flatMap(this::stable);
    }

    private static PlaneNewton.Condition condition(Caloric caloric, MolarState s, double value) {
        return new PlaneNewton.Condition(caloric.of(s) - value, caloric.byTemperature(s), caloric.byDensity(s));
    }

    /** The state, unless it lies inside the dome or outside the range, where the equation has no such phase. */
    private Optional<Point> stable(MolarState s) {
        double t = s.temperature();
        if (t < fluid.topTemperature()) {
            Dome.Edges edges = fluid.dome().atTemperature(t);
            if (s.density() < edges.liquidDensity() && s.density() > edges.vaporDensity()) {
                return Optional.empty();
            }
        }
        if (!(s.pressure() > 0)) {
            return Optional.empty();
        }
        fluid.requireInRange(s);
        boolean dense = s.density() > fluid.fluid().criticalMolarDensity();
        return Optional.of(new Point.OnePhase(fluid.phase(t, s.pressure(), dense), s, s.pressure()));
    }
}
