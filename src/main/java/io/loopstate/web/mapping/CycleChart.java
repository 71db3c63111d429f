package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.diagram.Plane;
import io.loopstate.engine.diagram.ProcessLine;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.web.chart.Chart;
import io.loopstate.web.chart.Note;
import io.loopstate.web.chart.Panel;
import io.loopstate.web.chart.Series;
import io.loopstate.web.chart.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The points of a loop on a property diagram: numbered in the direction of flow, the processes between them drawn. */
final class CycleChart {
    private static final Set<PointName> EVAPORATOR = Set.of(PointName.EVAPORATOR_INLET, PointName.EVAPORATOR_OUTLET);

    private final Equilibrium equilibrium;
    private final Plane plane;
    private final List<Point> points;
    private final StateDiagram diagram;
    private final List<Place> places = new ArrayList<>();

    /** Points that are drawn at one place, with the label of the place. */
    private record Place(String label, List<Point> points) {
        Point first() {
            return points.get(0);
        }

        String names() {
            return points.stream().map(point -> words(point.name())).collect(Collectors.joining(", "));
        }
    }

    CycleChart(Equilibrium equilibrium, Plane plane, List<Point> points, Output out) {
        this.equilibrium = equilibrium;
        this.plane = plane;
        this.points = points;
        diagram = StateDiagram.around(
                equilibrium, plane, points.stream().map(Point::state).toList(), out);
        points.forEach(this::place);
    }

    private void place(Point point) {
        Optional<Place> known = places.stream()
                .filter(place -> diagram.together(place.first().state(), point.state()))
                .findFirst();
        if (known.isPresent()) {
            known.get().points().add(point);
            return;
        }
        String label = point.name() == PointName.ISENTROPIC_COMPRESSOR_OUTLET
                ? label(PointName.COMPRESSOR_OUTLET) + 's'
                : Integer.toString(places.size() + 1);
        places.add(new Place(label, new ArrayList<>(List.of(point))));
    }

    private String label(PointName name) {
        return places.stream()
                .filter(place -> place.points().stream().anyMatch(point -> point.name() == name))
                .map(Place::label)
                .findFirst()
                .orElse("");
    }

    Chart chart(String subtitle) {
        String designation = equilibrium.refrigerant().designation();
        boolean enthalpy = plane == Plane.PRESSURE_ENTHALPY;
        String title = designation + ": "
                + (enthalpy ? "the loop in pressure over enthalpy" : "the loop in temperature over entropy");
        List<Series> series = new ArrayList<>(diagram.background());
        processes(series);
        List<Panel.Mark> marks = places.stream()
                .map(place -> new Panel.Mark(
                        style(place.first().name()),
                        diagram.vertex(place.first().state()),
                        place.label()))
                .toList();
        return new Chart(
                title,
                subtitle,
                description(enthalpy),
                1,
                490,
                List.of(new Panel("", diagram.x(), diagram.y(), series, marks)),
                key(),
                notes(),
                footer());
    }

    private static Style style(PointName name) {
        return name == PointName.ISENTROPIC_COMPRESSOR_OUTLET ? Style.IDEAL : Style.PROCESS;
    }

    private void processes(List<Series> series) {
        Point first = points.get(0);
        Point last = first;
        for (Point point : points) {
            if (point.name() == PointName.ISENTROPIC_COMPRESSOR_OUTLET) {
                series.addAll(diagram.process(Style.IDEAL, ProcessLine.Kind.COMPRESSION, first.state(), point.state()));
            } else if (point != first) {
                connect(last, point, series);
                last = point;
            }
        }
        if (EVAPORATOR.contains(last.name())) {
            connect(last, first, series);
        }
    }

    private void connect(Point from, Point to, List<Series> series) {
        kind(from.name(), to.name())
                .ifPresent(kind -> series.addAll(diagram.process(Style.PROCESS, kind, from.state(), to.state())));
    }

    /** Empty where a point between the two is not known. */
    private static Optional<ProcessLine.Kind> kind(PointName from, PointName to) {
        boolean compression = from == PointName.COMPRESSOR_INLET;
        boolean throttling = from == PointName.VALVE_INLET;
        if (compression) {
            return to == PointName.COMPRESSOR_OUTLET ? Optional.of(ProcessLine.Kind.COMPRESSION) : Optional.empty();
        }
        if (throttling) {
            return to == PointName.EVAPORATOR_INLET ? Optional.of(ProcessLine.Kind.THROTTLING) : Optional.empty();
        }
        return Optional.of(ProcessLine.Kind.HEAT);
    }

    private List<Chart.Key> key() {
        List<Chart.Key> key = new ArrayList<>();
        key.add(new Chart.Key(Style.PROCESS, "the loop"));
        if (places.stream().anyMatch(place -> place.label().endsWith("s"))) {
            key.add(new Chart.Key(Style.IDEAL, "compression without loss"));
        }
        key.addAll(diagram.key());
        return key;
    }

    private List<Note> notes() {
        return places.stream()
                .map(place -> new Note(
                        place.label() + "\u2002" + place.names(),
                        List.of(diagram.words(place.first().state()))))
                .toList();
    }

    private String description(boolean enthalpy) {
        String axes = enthalpy
                ? "Pressure on a logarithmic scale over specific enthalpy, with the bubble and dew line, lines of constant "
                        + "temperature, entropy and vapor quality."
                : "Temperature over specific entropy, with the bubble and dew line, lines of constant pressure and vapor "
                        + "quality.";
        return axes + " Points of the loop in the direction of flow: "
                + places.stream()
                        .map(place -> place.label() + ' ' + place.names() + ", "
                                + diagram.words(place.first().state()))
                        .collect(Collectors.joining("; "))
                + '.';
    }

    private String footer() {
        return "Pressures are absolute. Reference state of enthalpy and entropy: "
                + equilibrium
                        .referenceState()
                        .name()
                        .toLowerCase(Locale.ROOT)
                        .replace('_', ' ')
                        .replace("iir", "IIR")
                        .replace("ashrae", "ASHRAE")
                + ". The points are calculated; what lies between them is drawn as if losses and pressure drops were spread "
                + "evenly.";
    }

    private static String words(PointName name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
