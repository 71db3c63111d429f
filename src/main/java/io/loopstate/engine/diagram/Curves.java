package io.loopstate.engine.diagram;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.CriticalPoint;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;

/**
 * The curves of one refrigerant in one window, each by a parameter in which it is smooth: near the critical point the square
 * root of the distance from it, elsewhere the logarithm of pressure, or one unit for each of liquid, dome and vapor.
 */
final class Curves {
    /** How far from the critical point, in the square root of the share, saturation is asked for. */
    private static final double NEAR = 1e-3;
    /** Share of the critical temperature within which a run has come to the critical point. */
    private static final double ARRIVED = 1e-3;

    private static final int PARTS = 6;

    private final Equilibrium equilibrium;
    private final Window window;
    private final Tracer tracer;
    private final CriticalPoint critical;
    private final Limits limits;
    private final double lowPressure;
    private final double highPressure;
    /** Looked for once: where a blend's model has none, that takes a long search. */
    private final Optional<State> criticalState;

    Curves(Equilibrium equilibrium, Window window) {
        this.equilibrium = equilibrium;
        this.window = window;
        tracer = new Tracer(window);
        critical = equilibrium.refrigerant().criticalPoint();
        limits = equilibrium.refrigerant().limits();
        criticalState = attempt(() ->
                equilibrium.state(Variable.TEMPERATURE, critical.temperature(), Variable.DENSITY, critical.density()));
        boolean logarithmic = window.plane() == Plane.PRESSURE_ENTHALPY;
        lowPressure = logarithmic ? window.minY() : coldDew();
        highPressure = logarithmic ? Math.min(window.maxY(), limits.maxPressure()) : critical.pressure();
    }

    private double coldDew() {
        double cold = Math.max(window.minY(), equilibrium.refrigerant().minSaturationTemperature());
        return attempt(() -> equilibrium.saturationAtTemperature(cold).dew().pressure())
                .orElse(critical.pressure() * 1e-3);
    }

    /** Over temperature, since above the critical pressure a blend can have a bubble point still. */
    List<List<State>> bubble() {
        double lowest = equilibrium.refrigerant().minSaturationTemperature();
        double cold = window.plane() == Plane.TEMPERATURE_ENTROPY
                ? Math.max(window.minY(), lowest)
                : attempt(() -> equilibrium
                                .saturationAtPressure(lowPressure)
                                .bubble()
                                .temperature())
                        .orElse(lowest);
        double start = Math.sqrt(Math.max(0, 1 - cold / critical.temperature()));
        return toCritical(tracer.trace(
                u -> equilibrium
                        .saturationAtTemperature(critical.temperature() * (1 - u * u))
                        .bubble(),
                start,
                NEAR,
                2 * PARTS));
    }

    /** Over pressure, since above the critical temperature a blend can have a dew point still. */
    List<List<State>> dew() {
        return toCritical(overSaturation(
                pressure -> equilibrium.saturationAtPressure(pressure).dew()));
    }

    /** A line of constant quality, kg/kg. */
    List<List<State>> quality(double quality) {
        return toCritical(overSaturation(
                pressure -> equilibrium.state(Variable.PRESSURE, pressure, Variable.VAPOR_QUALITY, quality)));
    }

    private List<List<State>> overSaturation(DoubleFunction<State> atPressure) {
        double pc = critical.pressure();
        double start = Math.sqrt(Math.max(0, Math.log(pc / Math.min(lowPressure, pc))));
        return tracer.trace(u -> atPressure.apply(pc * Math.exp(-u * u)), start, NEAR, 2 * PARTS);
    }

    /** Ends the last run in the critical point where it has come close and the model has a state there. */
    private List<List<State>> toCritical(List<List<State>> runs) {
        if (runs.isEmpty()) {
            return runs;
        }
        List<State> last = runs.get(runs.size() - 1);
        State end = last.get(last.size() - 1);
        if (arrived(end)) {
            criticalState.ifPresent(last::add);
        }
        return runs;
    }

    /** Whether a state lies so close to the critical point that a line may be closed from there. */
    boolean arrived(State state) {
        return Math.abs(state.temperature() / critical.temperature() - 1) < ARRIVED;
    }

    /** From vapor through the dome to liquid, K. */
    List<List<State>> isotherm(double temperature) {
        double low = Math.log(lowPressure);
        double high = Math.log(highPressure);
        Optional<Saturation> dome = temperature < critical.temperature()
                ? attempt(() -> equilibrium.saturationAtTemperature(temperature))
                : Optional.empty();
        if (dome.isEmpty()) {
            return tracer.trace(p -> equilibrium.atPressureTemperature(Math.exp(p), temperature), low, high, 2 * PARTS);
        }
        State dew = dome.get().dew();
        State bubble = dome.get().bubble();
        double thin = Math.min(low, Math.log(dew.pressure()));
        double dense = Math.max(high, Math.log(bubble.pressure()));
        return tracer.trace(
                across(
                        dew,
                        bubble,
                        t -> equilibrium.atPressureTemperature(
                                Math.exp(thin + t * (Math.log(dew.pressure()) - thin)), temperature),
                        t -> equilibrium.state(Variable.TEMPERATURE, temperature, Variable.VAPOR_QUALITY, 1 - t),
                        t -> equilibrium.atPressureTemperature(
                                bubble.pressure() * Math.exp(t * (dense - Math.log(bubble.pressure()))), temperature)),
                0,
                3,
                PARTS);
    }

    /** From liquid through the dome to vapor, Pa. */
    List<List<State>> isobar(double pressure) {
        double cold = Math.max(window.minY(), limits.minTemperature());
        double hot = Math.min(window.maxY(), limits.maxTemperature());
        Optional<Saturation> dome = pressure < critical.pressure()
                ? attempt(() -> equilibrium.saturationAtPressure(pressure))
                : Optional.empty();
        if (dome.isEmpty()) {
            return tracer.trace(t -> equilibrium.atPressureTemperature(pressure, t), cold, hot, 2 * PARTS);
        }
        State bubble = dome.get().bubble();
        State dew = dome.get().dew();
        double first = Math.min(cold, bubble.temperature());
        double last = Math.max(hot, dew.temperature());
        return tracer.trace(
                across(
                        bubble,
                        dew,
                        t -> equilibrium.atPressureTemperature(pressure, first + t * (bubble.temperature() - first)),
                        t -> equilibrium.state(Variable.PRESSURE, pressure, Variable.VAPOR_QUALITY, t),
                        t -> equilibrium.atPressureTemperature(
                                pressure, dew.temperature() + t * (last - dew.temperature()))),
                0,
                3,
                PARTS);
    }

    /** A curve of three pieces, each over one unit, which meet in two states. */
    private static DoubleFunction<State> across(
            State entry,
            State exit,
            DoubleFunction<State> before,
            DoubleFunction<State> dome,
            DoubleFunction<State> after) {
        return t -> {
            if (t == 1) {
                return entry;
            }
            if (t == 2) {
                return exit;
            }
            return t < 1 ? before.apply(t) : t < 2 ? dome.apply(t - 1) : after.apply(t - 2);
        };
    }

    /** Up in pressure, J/(kg K). */
    List<List<State>> isentrope(double entropy) {
        return tracer.trace(
                p -> equilibrium.atPressureEntropy(Math.exp(p), entropy),
                Math.log(lowPressure),
                Math.log(highPressure),
                PARTS);
    }

    private static <V> Optional<V> attempt(Supplier<V> value) {
        try {
            return Optional.of(value.get());
        } catch (EngineException e) {
            return Optional.empty();
        }
    }
}
