package io.loopstate.engine.diagram;

import io.loopstate.engine.diagram.Line.Kind;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The lines of a refrigerant in a window of a plane. */
public final class PropertyDiagram {
    private PropertyDiagram() {}

    /**
     * What is to be drawn.
     *
     * @param temperatures of isotherms, K
     * @param entropies of isentropes, J/(kg K)
     * @param qualities of lines inside the dome, between 0 and 1
     * @param pressures of isobars, Pa
     */
    public record Spec(
            Equilibrium equilibrium,
            Window window,
            List<Double> temperatures,
            List<Double> entropies,
            List<Double> qualities,
            List<Double> pressures) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(window);
            temperatures = List.copyOf(temperatures);
            entropies = List.copyOf(entropies);
            qualities = List.copyOf(qualities);
            pressures = List.copyOf(pressures);
        }
    }

    /**
     * The lines: first the edges of the dome, then the others in the order asked for. A line that the refrigerant does not
     * have in the window is left out, one that is interrupted comes in parts.
     *
     * <p>Cost: some 10 states a line, up to 60 where it bends.
     */
    public static List<Line> draw(Spec spec) {
        Curves curves = new Curves(spec.equilibrium(), spec.window());
        List<Line> lines = new ArrayList<>();
        List<List<State>> bubble = curves.bubble();
        List<List<State>> dew = curves.dew();
        close(curves, bubble, dew);
        add(lines, Kind.BUBBLE, Double.NaN, bubble);
        add(lines, Kind.DEW, Double.NaN, dew);
        spec.qualities().forEach(value -> add(lines, Kind.QUALITY, value, curves.quality(value)));
        spec.temperatures().forEach(value -> add(lines, Kind.ISOTHERM, value, curves.isotherm(value)));
        spec.pressures().forEach(value -> add(lines, Kind.ISOBAR, value, curves.isobar(value)));
        spec.entropies().forEach(value -> add(lines, Kind.ISENTROPE, value, curves.isentrope(value)));
        return lines;
    }

    /** Leads the bubble line over to the dew line where both have come close to the critical point. */
    private static void close(Curves curves, List<List<State>> bubble, List<List<State>> dew) {
        if (bubble.isEmpty() || dew.isEmpty()) {
            return;
        }
        List<State> rising = bubble.get(bubble.size() - 1);
        State top = dew.get(dew.size() - 1).get(dew.get(dew.size() - 1).size() - 1);
        if (curves.arrived(rising.get(rising.size() - 1)) && curves.arrived(top)) {
            rising.add(top);
        }
    }

    private static void add(List<Line> lines, Kind kind, double value, List<List<State>> runs) {
        runs.forEach(run -> lines.add(new Line(kind, value, run)));
    }
}
