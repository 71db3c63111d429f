package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.Variable;
import java.util.Optional;

/**
 * States at an entropy and an enthalpy or internal energy. Along an isentrope both rise with pressure, (dh/dp)_s = v and
 * (du/dp)_s = p / (rho w)^2, inside the dome and outside, so there is one state: a bracketed iteration in ln p, left for
 * Newton's method in temperature and density as soon as one phase is reached. Where it leaves the range, the ends of the
 * isentrope tell at once whether there is a state at all.
 */
final class CaloricPair {
    private static final int MAX_ITERATIONS = 100;
    private static final double TOLERANCE = 1e-11;
    /** Start at this share of the critical pressure, in the middle of the range of refrigeration. */
    private static final double START = 0.2;

    private static final double LOWEST_PRESSURE = 1e-12;
    private static final double RESIDUAL = 1e-9;
    /** Share of RT by which an energy at the end of an isentrope tells its side surely. */
    private static final double CLOSE = 1e-6;
    /** Entropy and energy of an unloaded liquid are all but the same condition, so that Newton is late to square its error. */
    private static final double SMALL_STEP = 1e-9;

    /** Furthest that one state is carried along the isentrope as if the gas were perfect, as a ratio of pressures. */
    private static final double FURTHEST = 100;

    private final FluidModel fluid;
    private final double entropy;
    private final Caloric caloric;
    private final double value;
    private final Gaps gaps = new Gaps();

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
        return search().or(this::fromColdest).or(this::alongEnergy).orElseThrow(this::refusal);
    }

    /** Both ends of the isentrope in the range: temperature rises along it with pressure. */
    private record Ends(Point cold, Point hot) {}

    /** Logarithms of two pressures; cut where the isentrope leaves the range, as far as that is known. */
    private record Bracket(double lo, double hi, boolean cut) {
        Bracket above(double x) {
            return new Bracket(x, hi, cut);
        }

        Bracket below(double x) {
            return new Bracket(lo, x, cut);
        }

        double width() {
            return hi - lo;
        }

        double middle() {
            return 0.5 * (lo + hi);
        }

        boolean holds(double x) {
            return x > lo && x < hi;
        }

        boolean endsAt(double x) {
            return x == lo || x == hi;
        }
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
        Bracket bracket =
                new Bracket(Math.log(fluid.criticalPressure() * LOWEST_PRESSURE), Math.log(fluid.maxPressure()), false);
        double x = Math.min(Math.log(fluid.criticalPressure() * START), bracket.hi());
        Optional<Point> last = Optional.empty();
        double lastX = Double.NaN;
        double lastResidual = Double.NaN;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            Optional<Point> point = isentrope(Math.exp(x));
            double next = Double.NaN;
            if (point.isEmpty()) {
                bracket = bracket.cut() ? withoutState(bracket, x) : betweenEnds(bracket);
                if (last.isPresent() && bracket.endsAt(lastX)) {
                    requireWithinReach(last.get(), bracket.width());
                }
            } else {
                double residual = caloric.of(point.get()) - value;
                Optional<Point> settled = newton(point.get(), residual);
                if (settled.isPresent()) {
                    return settled;
                }
                bracket = residual < 0 ? bracket.above(x) : bracket.below(x);
                double slope = caloric == Caloric.ENTHALPY || Double.isNaN(lastX)
                        ? point.get().pressure() / point.get().density()
                        : (residual - lastResidual) / (x - lastX);
                next = x - residual / slope;
                if (residual == 0 || Math.abs(next - x) <= TOLERANCE * Math.max(1, Math.abs(x))) {
                    return isentrope(Math.exp(next)).or(() -> point).filter(this::satisfies);
                }
                last = point;
                lastX = x;
                lastResidual = residual;
            }
            if (bracket.width() <= TOLERANCE * Math.max(1, Math.abs(x))) {
                return atEndOfRange(bracket);
            }
            x = bracket.holds(next) ? next : bracket.middle();
        }
        return Optional.empty();
    }

    /** The isentrope leaves the range of temperature at its cold, low end or its hot, high end. */
    private Bracket withoutState(Bracket bracket, double x) {
        return beyondHotEnd(Math.exp(x)) ? bracket.below(x) : bracket.above(x);
    }

    private Bracket betweenEnds(Bracket bracket) {
        Optional<Ends> ends = ends();
        ends.ifPresent(this::requireBetween);
        double cold = ends.map(e -> Math.log(e.cold().pressure())).orElse(bracket.lo());
        double hot = ends.map(e -> Math.log(e.hot().pressure())).orElse(bracket.hi());
        return new Bracket(Math.max(bracket.lo(), cold), Math.min(bracket.hi(), hot), true);
    }

    /** Empty where the fluid contracts on heating, which has no such order, or is divided into two liquids at an end. */
    private Optional<Ends> ends() {
        if (fluid.densityMaximum()) {
            return Optional.empty();
        }
        return atTemperature(fluid.maxTemperature())
                .or(this::atHighestPressure)
                .flatMap(hot -> atTemperature(fluid.minTemperature()).map(cold -> new Ends(cold, hot)));
    }

    /** Entropy is least where it is coldest and the pressure highest. */
    private Optional<Point> atHighestPressure() {
        Optional<Point> point = isentrope(fluid.maxPressure());
        if (point.isEmpty() && entropy < leastEntropy()) {
            throw none();
        }
        return point;
    }

    private double leastEntropy() {
        var coldest = fluid.isotherm(fluid.minTemperature());
        return coldest.state(PressureTemperature.density(fluid, coldest, fluid.maxPressure()))
                .entropy();
    }

    private void requireBetween(Ends ends) {
        boolean between = caloric.of(ends.cold()) <= value && value <= caloric.of(ends.hot());
        if (!between && !satisfies(ends.cold()) && !satisfies(ends.hot())) {
            throw none();
        }
    }

    private Optional<Point> atTemperature(double temperature) {
        return gaps.ifComputed(() -> TemperatureCaloric.solve(fluid, temperature, Caloric.ENTROPY, entropy))
                .flatMap(points -> points.stream().findFirst());
    }

    /** With an end of the isentrope less than a width in ln p away: dh = v dp and du = -p dv along it. */
    private void requireWithinReach(Point point, double width) {
        boolean beyondReach = Math.abs(caloric.of(point) - value) > fluid.reach(point, width);
        if (beyondReach && !within(CLOSE, point) && width < 1 && !fluid.densityMaximum()) {
            throw beyond(point);
        }
    }

    /** At the end of the range one side of the last bracket has no state. */
    private Optional<Point> atEndOfRange(Bracket bracket) {
        Optional<Point> end = isentrope(Math.exp(bracket.lo())).or(() -> isentrope(Math.exp(bracket.hi())));
        if (end.isPresent() && !fluid.densityMaximum() && !within(CLOSE, end.get())) {
            throw beyond(end.get());
        }
        return end.filter(this::satisfies);
    }

    /** There is no state, or it is colder than what is computed. */
    private EngineException beyond(Point end) {
        if (caloric.of(end) < value) {
            return none();
        }
        atTemperature(fluid.minTemperature());
        return refusal();
    }

    private boolean satisfies(Point point) {
        return within(RESIDUAL, point);
    }

    private boolean within(double share, Point point) {
        return Math.abs(caloric.of(point) - value) <= share * fluid.model().gasConstant() * point.temperature();
    }

    /** What hides a part of the isentrope, if something does. */
    private EngineException refusal() {
        return gaps.first().orElseGet(this::none);
    }

    private EngineException none() {
        return fluid.noSuchState(Variable.SPECIFIC_ENTROPY, caloric.variable());
    }

    private Optional<Point> isentrope(double pressure) {
        return gaps.ifComputed(() -> PressureCaloric.solve(fluid, pressure, Caloric.ENTROPY, entropy));
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
