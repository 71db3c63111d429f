package io.loopstate.web.mapping;

import io.loopstate.engine.diagram.Plane;
import io.loopstate.engine.diagram.ProcessLine;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import io.loopstate.web.chart.Chart;
import io.loopstate.web.chart.Note;
import io.loopstate.web.chart.Panel;
import io.loopstate.web.chart.Series;
import io.loopstate.web.chart.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Named states and the processes between them on a property diagram. */
final class StatesChart {
    private final Equilibrium equilibrium;
    private final Plane plane;
    private final StateDiagram diagram;
    private final List<Place> places = new ArrayList<>();
    private final List<Series> processes = new ArrayList<>();

    private record Place(String label, String names, State state, Style style) {}

    StatesChart(Equilibrium equilibrium, Plane plane, List<State> states, Output out) {
        this.equilibrium = equilibrium;
        this.plane = plane;
        diagram = StateDiagram.around(equilibrium, plane, states, out);
    }

    /** Whether two states are drawn at the same place. */
    boolean together(State a, State b) {
        return diagram.together(a, b);
    }

    /** Adds a state. */
    void place(String label, String names, State state, Style style) {
        places.add(new Place(label, names, state, style));
    }

    /** Adds a process. */
    void process(Style style, ProcessLine.Kind kind, State inlet, State outlet) {
        processes.addAll(diagram.process(style, kind, inlet, outlet));
    }

    /**
     * The chart.
     *
     * @param subject what is drawn, such as "the loop"
     * @param ideal what the line without loss is, where there is one
     */
    Chart chart(String subject, String ideal, String subtitle) {
        boolean enthalpy = plane == Plane.PRESSURE_ENTHALPY;
        List<Series> series = new ArrayList<>(diagram.background());
        series.addAll(processes);
        List<Panel.Mark> marks = places.stream()
                .map(place -> new Panel.Mark(place.style(), diagram.vertex(place.state()), place.label()))
                .toList();
        List<Note> notes = places.stream()
                .map(place -> new Note(place.label() + "\u2002" + place.names(), List.of(diagram.words(place.state()))))
                .toList();
        return new Chart(
                equilibrium.refrigerant().designation() + ": " + subject
                        + (enthalpy ? " in pressure over enthalpy" : " in temperature over entropy"),
                subtitle,
                description(subject, enthalpy),
                1,
                490,
                List.of(new Panel("", diagram.x(), diagram.y(), series, marks)),
                key(subject, ideal, series),
                notes,
                "Pressures are absolute. Reference state of enthalpy and entropy: " + reference()
                        + ". The points are calculated; what lies between them is drawn as if losses and pressure drops "
                        + "were spread evenly.");
    }

    private List<Chart.Key> key(String subject, String ideal, List<Series> drawn) {
        List<Chart.Key> key = new ArrayList<>();
        key.add(new Chart.Key(Style.PROCESS, subject));
        if (places.stream().anyMatch(place -> place.style() == Style.IDEAL)) {
            key.add(new Chart.Key(Style.IDEAL, ideal));
        }
        key.addAll(diagram.key(drawn));
        return key;
    }

    private String description(String subject, boolean enthalpy) {
        String axes = enthalpy
                ? "Pressure on a logarithmic scale over specific enthalpy, with the bubble and dew line, lines of constant "
                        + "temperature, entropy and vapor quality."
                : "Temperature over specific entropy, with the bubble and dew line, lines of constant pressure and vapor "
                        + "quality.";
        return axes + " Points of " + subject + " in order: "
                + places.stream()
                        .map(place -> place.label() + ' ' + place.names() + ", " + diagram.words(place.state()))
                        .collect(Collectors.joining("; "))
                + '.';
    }

    private String reference() {
        return switch (equilibrium.referenceState()) {
            case IIR -> "IIR";
            case ASHRAE -> "ASHRAE";
            case NORMAL_BOILING_POINT -> "normal boiling point";
        };
    }
}
