package io.loopstate.engine.diagram;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What a property spans in a window, from some states of it: good for choosing levels of lines. */
public final class Extent {
    private static final int PARTS = 3;

    private final List<State> states;

    private Extent(List<State> states) {
        this.states = states;
    }

    /** From a few places across the window; where the equilibrium refuses there is none. */
    public static Extent of(Equilibrium equilibrium, Window window) {
        List<State> states = new ArrayList<>();
        Plane plane = window.plane();
        for (int i = 0; i <= PARTS; i++) {
            for (int j = 0; j <= PARTS; j++) {
                double x = window.minX() + (window.maxX() - window.minX()) * i / PARTS;
                double share = (double) j / PARTS;
                double y = plane == Plane.PRESSURE_ENTHALPY
                        ? window.minY() * Math.pow(window.maxY() / window.minY(), share)
                        : window.minY() + share * (window.maxY() - window.minY());
                try {
                    states.add(equilibrium.state(plane.up(), y, plane.across(), x));
                } catch (EngineException e) {
                    continue;
                }
            }
        }
        return new Extent(states);
    }

    /** Whether there is no state in the window at all. */
    public boolean empty() {
        return states.isEmpty();
    }

    /** Whether liquid and vapor are together somewhere in the window. */
    public boolean showsDome() {
        return states.stream().anyMatch(State::saturated);
    }

    /** Lowest value found. */
    public double lowest(ToDoubleFunction<State> property) {
        return states.stream().mapToDouble(property).min().orElseThrow();
    }

    /** Highest value found. */
    public double highest(ToDoubleFunction<State> property) {
        return states.stream().mapToDouble(property).max().orElseThrow();
    }
}
