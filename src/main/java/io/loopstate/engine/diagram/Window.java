package io.loopstate.engine.diagram;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.CriticalPoint;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/**
 * The part of a plane that a diagram shows, in SI units.
 *
 * @param minX lowest number across
 * @param maxX highest number across
 * @param minY lowest number up, above 0
 * @param maxY highest number up
 */
public record Window(Plane plane, double minX, double maxX, double minY, double maxY) {
    /** Room beside the states, as shares of what they take up. */
    private static final double LEFT = 0.06;

    private static final double RIGHT = 0.14;
    /** Shares of the critical pressure where the dew line reaches furthest. */
    private static final List<Double> SHOULDERS = List.of(0.2, 0.5, 0.8);
    /** Factors below the lowest and above the highest pressure. */
    private static final double BELOW = 0.6;

    private static final double ABOVE = 1.6;
    /** Share of the critical temperature above which a gas is far from its dome. */
    private static final double GAS = 1.2;
    /** Room below and above temperatures, as a share of what they span. */
    private static final double TEMPERATURE_ROOM = 0.12;

    public Window {
        Objects.requireNonNull(plane);
        if (!(maxX > minX && maxY > minY && minY > 0)) {
            throw new IllegalArgumentException("an empty window");
        }
    }

    /**
     * A window with room around states and around the dome from the lowest of them up.
     *
     * @param states at least one
     */
    public static Window around(Plane plane, Equilibrium equilibrium, List<State> states) {
        CriticalPoint critical = equilibrium.refrigerant().criticalPoint();
        DoubleSummaryStatistics pressures = range(states, State::pressure);
        DoubleSummaryStatistics temperatures = range(states, State::temperature);
        double lowest = pressures.getMin() * BELOW;
        // a gas far above its critical temperature has its dome elsewhere
        List<State> dome = temperatures.getMin() > GAS * critical.temperature() ? List.of() : dome(equilibrium, lowest);
        List<State> shown = new ArrayList<>(states);
        shown.addAll(dome);
        DoubleSummaryStatistics across = range(shown, plane::x);
        double width = Math.max(across.getMax() - across.getMin(), Math.abs(across.getMax()) * 1e-3 + 1);
        double minX = across.getMin() - LEFT * width;
        double maxX = across.getMax() + RIGHT * width;
        if (plane == Plane.PRESSURE_ENTHALPY) {
            double highest = dome.isEmpty() ? pressures.getMax() : Math.max(critical.pressure(), pressures.getMax());
            double top =
                    Math.min(highest * ABOVE, equilibrium.refrigerant().limits().maxPressure());
            return new Window(plane, minX, maxX, lowest, Math.max(top, pressures.getMax() * 1.01));
        }
        double cold = range(shown, State::temperature).getMin();
        double hot = dome.isEmpty() ? temperatures.getMax() : Math.max(critical.temperature(), temperatures.getMax());
        double room = TEMPERATURE_ROOM * (hot - cold) + 1;
        return new Window(plane, minX, maxX, Math.max(cold - room / 4, 1), hot + room);
    }

    /** The feet of the dome at a pressure, or as low as it goes, and its shoulders. */
    private static List<State> dome(Equilibrium equilibrium, double pressure) {
        List<State> dome = new ArrayList<>();
        attempt(() -> equilibrium.saturationAtPressure(pressure))
                .or(() -> attempt(() -> equilibrium.saturationAtTemperature(
                        equilibrium.refrigerant().minSaturationTemperature())))
                .ifPresent(feet -> dome.addAll(List.of(feet.bubble(), feet.dew())));
        for (double share : SHOULDERS) {
            attempt(() -> equilibrium.saturationAtPressure(
                            share * equilibrium.refrigerant().criticalPoint().pressure()))
                    .ifPresent(saturation -> dome.add(saturation.dew()));
        }
        return dome;
    }

    private static DoubleSummaryStatistics range(List<State> states, ToDoubleFunction<State> property) {
        return states.stream().mapToDouble(property).summaryStatistics();
    }

    private static <V> Optional<V> attempt(Supplier<V> value) {
        try {
            return Optional.of(value.get());
        } catch (EngineException e) {
            return Optional.empty();
        }
    }

    /** Whether two states lie beyond the same edge, so that a line between them is not seen. */
    boolean beside(State a, State b) {
        return plane.x(a) < minX && plane.x(b) < minX
                || plane.x(a) > maxX && plane.x(b) > maxX
                || plane.y(a) < minY && plane.y(b) < minY
                || plane.y(a) > maxY && plane.y(b) > maxY;
    }

    /** Distance of a state from the chord between two others, as a share of the window. */
    double bend(State a, State middle, State b) {
        double dx = across(b) - across(a);
        double dy = up(b) - up(a);
        double length = Math.hypot(dx, dy);
        double mx = across(middle) - across(a);
        double my = up(middle) - up(a);
        return length < 1e-9 ? Math.hypot(mx, my) : Math.abs(dx * my - dy * mx) / length;
    }

    private double across(State state) {
        return plane.x(state) / (maxX - minX);
    }

    private double up(State state) {
        return plane.drawn(plane.y(state)) / (plane.drawn(maxY) - plane.drawn(minY));
    }
}
