package io.loopstate.web.mapping;

import io.loopstate.engine.diagram.Extent;
import io.loopstate.engine.diagram.Line;
import io.loopstate.engine.diagram.Plane;
import io.loopstate.engine.diagram.ProcessLine;
import io.loopstate.engine.diagram.PropertyDiagram;
import io.loopstate.engine.diagram.Window;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.chart.Axis;
import io.loopstate.web.chart.Chart;
import io.loopstate.web.chart.Series;
import io.loopstate.web.chart.Style;
import io.loopstate.web.chart.Tick;
import io.loopstate.web.chart.Ticks;
import io.loopstate.web.chart.Vertex;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** A property diagram in the units of the reply, pressures absolute, with round levels of its lines in these units. */
final class StateDiagram {
    private static final int ISOTHERMS = 9;
    private static final int ISENTROPES = 9;
    /** Share of the entropies across a dome that have no isentrope of their own: the liquid's. */
    private static final double LIQUID = 0.4;

    private static final List<Double> QUALITIES = List.of(0.2, 0.4, 0.6, 0.8);

    private final Equilibrium equilibrium;
    private final Plane plane;
    private final Window window;
    private final Measure across;
    private final Measure up;
    private final Measure temperature;
    private final Measure entropy;
    private final Measure pressure;

    private StateDiagram(Equilibrium equilibrium, Window window, Output out) {
        this.equilibrium = equilibrium;
        this.window = window;
        plane = window.plane();
        Output absolute = out.absolute();
        temperature = new Measure(absolute, QuantityKind.TEMPERATURE);
        entropy = new Measure(absolute, QuantityKind.SPECIFIC_ENTROPY);
        pressure = new Measure(absolute, QuantityKind.PRESSURE);
        boolean enthalpy = plane == Plane.PRESSURE_ENTHALPY;
        across = enthalpy ? new Measure(absolute, QuantityKind.SPECIFIC_ENERGY) : entropy;
        up = enthalpy ? pressure : temperature;
    }

    /** A diagram with room for states. */
    static StateDiagram around(Equilibrium equilibrium, Plane plane, List<State> states, Output out) {
        return new StateDiagram(equilibrium, Window.around(plane, equilibrium, states), out);
    }

    Axis x() {
        String name = plane == Plane.PRESSURE_ENTHALPY ? "Specific enthalpy" : "Specific entropy";
        return Axis.linear(name + ", " + across.symbol(), across.of(window.minX()), across.of(window.maxX()), 8);
    }

    Axis y() {
        double from = up.of(window.minY());
        double to = up.of(window.maxY());
        return plane == Plane.PRESSURE_ENTHALPY
                ? Axis.logarithmic("Absolute pressure, " + up.symbol(), from, to)
                : Axis.linear("Temperature, " + up.symbol(), from, to, 8);
    }

    Vertex vertex(State state) {
        return new Vertex(across.of(plane.x(state)), up.of(plane.y(state)));
    }

    /** Whether two states are drawn at the same place. */
    boolean together(State a, State b) {
        Vertex va = new Vertex(plane.x(a) / (window.maxX() - window.minX()), drawn(plane.y(a)));
        Vertex vb = new Vertex(plane.x(b) / (window.maxX() - window.minX()), drawn(plane.y(b)));
        return Math.hypot(va.x() - vb.x(), va.y() - vb.y()) < 2e-3;
    }

    private double drawn(double y) {
        return plane == Plane.PRESSURE_ENTHALPY
                ? Math.log(y) / Math.log(window.maxY() / window.minY())
                : y / (window.maxY() - window.minY());
    }

    /** A process between two states. */
    List<Series> process(Style style, ProcessLine.Kind kind, State inlet, State outlet) {
        return ProcessLine.between(equilibrium, window, kind, inlet, outlet).stream()
                .map(run -> Series.of(style, run.stream().map(this::vertex).toList()))
                .toList();
    }

    /** The refrigerant's own lines, from the back to the front. */
    List<Series> background() {
        Extent extent = Extent.of(equilibrium, window);
        boolean enthalpy = plane == Plane.PRESSURE_ENTHALPY;
        Map<Double, String> tags = new HashMap<>();
        List<Double> temperatures = enthalpy ? levels(isotherms(extent), temperature, "", tags) : List.of();
        List<Double> entropies = enthalpy ? levels(isentropes(extent), entropy, "s ", tags) : List.of();
        List<Double> pressures = enthalpy ? List.of() : levels(isobars(extent), pressure, "", tags);
        QUALITIES.forEach(quality -> tags.put(quality, "x " + quality));
        List<Series> series = new ArrayList<>();
        List<Line> lines = PropertyDiagram.draw(
                new PropertyDiagram.Spec(equilibrium, window, temperatures, entropies, QUALITIES, pressures));
        for (Line line : lines) {
            List<Vertex> vertices = line.states().stream().map(this::vertex).toList();
            series.add(
                    new Series(style(line.kind()), vertices, tags.getOrDefault(line.value(), ""), tagAt(line.kind())));
        }
        return series;
    }

    private List<Tick> isotherms(Extent extent) {
        return extent.empty()
                ? List.of()
                : Ticks.linear(
                        temperature.of(extent.lowest(State::temperature)),
                        temperature.of(extent.highest(State::temperature)),
                        ISOTHERMS);
    }

    /** Of the vapor: from the critical point's up. */
    private List<Tick> isentropes(Extent extent) {
        if (extent.empty()) {
            return List.of();
        }
        double lowest = entropy.of(extent.lowest(State::specificEntropy));
        double highest = entropy.of(extent.highest(State::specificEntropy));
        double from = extent.showsDome() ? lowest + LIQUID * (highest - lowest) : lowest;
        return Ticks.linear(from, highest, ISENTROPES);
    }

    private List<Tick> isobars(Extent extent) {
        return extent.empty()
                ? List.of()
                : Ticks.logarithmic(
                                pressure.of(extent.lowest(State::pressure)),
                                pressure.of(Math.min(
                                        extent.highest(State::pressure),
                                        4
                                                * equilibrium
                                                        .refrigerant()
                                                        .criticalPoint()
                                                        .pressure())))
                        .stream()
                        .filter(tick -> !tick.label().isEmpty())
                        .toList();
    }

    /** SI values of round numbers, and what is written on their lines. */
    private static List<Double> levels(List<Tick> ticks, Measure measure, String prefix, Map<Double, String> tags) {
        List<Double> levels = new ArrayList<>();
        for (Tick tick : ticks) {
            double si = measure.si(tick.value());
            levels.add(si);
            String number = prefix + tick.label();
            tags.put(si, prefix.isEmpty() ? number + '\u00a0' + measure.symbol() : number);
        }
        return levels;
    }

    private static Style style(Line.Kind kind) {
        return switch (kind) {
            case BUBBLE, DEW -> Style.BOUNDARY;
            case ISOTHERM -> Style.ISOTHERM;
            case ISENTROPE -> Style.ISENTROPE;
            case ISOBAR -> Style.ISOBAR;
            case QUALITY -> Style.QUALITY;
        };
    }

    private static double tagAt(Line.Kind kind) {
        return switch (kind) {
            case ISENTROPE, ISOBAR -> 0.95;
            default -> 0.03;
        };
    }

    /** What the lines mean that are drawn. */
    List<Chart.Key> key(List<Series> drawn) {
        Set<Style> styles = drawn.stream().map(Series::style).collect(Collectors.toSet());
        return key().stream().filter(key -> styles.contains(key.style())).toList();
    }

    private List<Chart.Key> key() {
        List<Chart.Key> key = new ArrayList<>();
        key.add(new Chart.Key(Style.BOUNDARY, "bubble and dew line"));
        if (plane == Plane.PRESSURE_ENTHALPY) {
            key.add(new Chart.Key(Style.ISOTHERM, "temperature"));
            key.add(new Chart.Key(Style.ISENTROPE, "entropy s, " + entropy.symbol()));
        } else {
            key.add(new Chart.Key(Style.ISOBAR, "absolute pressure"));
        }
        key.add(new Chart.Key(Style.QUALITY, "vapor quality x"));
        return key;
    }

    /** The words of a place: temperature, pressure, and the property that is drawn across. */
    String words(State state) {
        return temperature.words(state.temperature()) + ", " + pressure.words(state.pressure()) + ", "
                + across.words(plane.x(state));
    }
}
