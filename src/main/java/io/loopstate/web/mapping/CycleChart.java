package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.diagram.Plane;
import io.loopstate.engine.diagram.ProcessLine;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.web.chart.Chart;
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

    private final List<Point> points;
    private final StatesChart chart;
    private final List<Place> places = new ArrayList<>();

    /** Points that are drawn at one place, with the label of the place. */
    private record Place(String label, List<Point> points) {
        Point first() {
            return points.get(0);
        }

        Style style() {
            return first().name() == PointName.ISENTROPIC_COMPRESSOR_OUTLET ? Style.IDEAL : Style.PROCESS;
        }

        String names() {
            return points.stream().map(point -> words(point.name())).collect(Collectors.joining(", "));
        }
    }

    CycleChart(Equilibrium equilibrium, Plane plane, List<Point> points, Output out) {
        this.points = points;
        chart = new StatesChart(
                equilibrium, plane, points.stream().map(Point::state).toList(), out);
        points.forEach(this::place);
    }

    private void place(Point point) {
        Optional<Place> known = places.stream()
                .filter(place -> chart.together(place.first().state(), point.state()))
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

    Chart chart(String subject, String subtitle) {
        processes();
        places.forEach(
                place -> chart.place(place.label(), place.names(), place.first().state(), place.style()));
        return chart.chart(subject, "compression without loss", subtitle);
    }

    private void processes() {
        Point first = points.get(0);
        Point last = first;
        for (Point point : points) {
            if (point.name() == PointName.ISENTROPIC_COMPRESSOR_OUTLET) {
                chart.process(Style.IDEAL, ProcessLine.Kind.COMPRESSION, first.state(), point.state());
            } else if (point != first) {
                connect(last, point);
                last = point;
            }
        }
        if (EVAPORATOR.contains(last.name())) {
            connect(last, first);
        }
    }

    private void connect(Point from, Point to) {
        kind(from.name(), to.name()).ifPresent(kind -> chart.process(Style.PROCESS, kind, from.state(), to.state()));
    }

    /** Empty where a point between the two is not known. */
    private static Optional<ProcessLine.Kind> kind(PointName from, PointName to) {
        if (from == PointName.COMPRESSOR_INLET) {
            return to == PointName.COMPRESSOR_OUTLET ? Optional.of(ProcessLine.Kind.COMPRESSION) : Optional.empty();
        }
        if (from == PointName.VALVE_INLET) {
            return to == PointName.EVAPORATOR_INLET ? Optional.of(ProcessLine.Kind.THROTTLING) : Optional.empty();
        }
        return Optional.of(ProcessLine.Kind.HEAT);
    }

    private static String words(PointName name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
