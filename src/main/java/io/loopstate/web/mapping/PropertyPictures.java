package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.PropertyTable;
import io.loopstate.engine.cycle.SaturationQuery;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;
import io.loopstate.units.PressureReference;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.chart.Axis;
import io.loopstate.web.chart.Chart;
import io.loopstate.web.chart.Note;
import io.loopstate.web.chart.Panel;
import io.loopstate.web.chart.Series;
import io.loopstate.web.chart.Style;
import io.loopstate.web.chart.Vertex;
import io.loopstate.web.dto.SaturationRequest;
import io.loopstate.web.dto.TableRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Saturation as pressure over temperature, and superheated vapor over temperature. */
public final class PropertyPictures {
    /** One saturation on the line that it belongs to. */
    public static final Picture<SaturationRequest, SaturationQuery.Spec, SaturationQuery.Result> SATURATION =
            Picture.of(SaturationMapping.OPERATION, PropertyPictures::saturation);

    /** A table of saturation or of superheated vapor. */
    public static final Picture<TableRequest, TableMapping.Spec, TableMapping.Result> TABLE =
            Picture.of(TableMapping.OPERATION, PropertyPictures::table);

    /** K shown on both sides of one saturation. */
    private static final double AROUND = 30;

    private static final int POINTS = 41;
    private static final double ROOM = 0.04;

    private PropertyPictures() {}

    private static Chart saturation(Input<SaturationRequest> input, SaturationQuery.Result result) {
        Equilibrium equilibrium = input.equilibrium();
        Saturation here = result.saturation();
        double lowest = equilibrium.refrigerant().minSaturationTemperature();
        double critical = equilibrium.refrigerant().criticalPoint().temperature();
        double from = Math.max(lowest, here.bubble().temperature() - AROUND);
        double to = Math.min(critical * (1 - 1e-6), here.dew().temperature() + AROUND);
        List<Saturation> line = line(equilibrium, from, to);
        return curves(input, line.isEmpty() ? List.of(here) : line, List.of(here), true);
    }

    /** From one temperature (K) to another, as far as there is saturation. */
    private static List<Saturation> line(Equilibrium equilibrium, double from, double to) {
        return IntStream.range(0, POINTS)
                .mapToObj(i -> from + (to - from) * i / (POINTS - 1))
                .flatMap(t -> attempt(equilibrium, t))
                .toList();
    }

    private static Stream<Saturation> attempt(Equilibrium equilibrium, double temperature) {
        try {
            return Stream.of(equilibrium.saturationAtTemperature(temperature));
        } catch (EngineException e) {
            return Stream.empty();
        }
    }

    private static Chart table(Input<TableRequest> input, TableMapping.Result result) {
        if (result.superheat().isPresent()) {
            return vapor(input, result.superheat().get());
        }
        List<Saturation> rows = result.saturation().orElseThrow().rows().stream()
                .map(PropertyTable.SaturationRow::saturation)
                .toList();
        double from = rows.get(0).bubble().temperature();
        double to = rows.get(rows.size() - 1).dew().temperature();
        List<Saturation> line = rows.size() == 1 ? rows : line(input.equilibrium(), from, to);
        return curves(input, line.isEmpty() ? rows : line, rows, false);
    }

    /** Bubble and dew line, one line where they are the same; gauge pressures on a straight scale, others logarithmic. */
    private static Chart curves(Input<?> input, List<Saturation> line, List<Saturation> marked, boolean named) {
        Output out = new Measure(input.output(), QuantityKind.PRESSURE).unit().reference() == PressureReference.VACUUM
                ? input.output().absolute()
                : input.output();
        Measure pressure = new Measure(out, QuantityKind.PRESSURE);
        Measure temperature = new Measure(out, QuantityKind.TEMPERATURE);
        boolean glide = line.stream()
                .anyMatch(row -> Math.abs(row.temperatureGlide()) > 1e-3
                        || row.pressureGlide() > 1e-4 * row.dew().pressure());
        List<Vertex> bubble = vertices(line.stream().map(Saturation::bubble), temperature, pressure);
        List<Vertex> dew = vertices(line.stream().map(Saturation::dew), temperature, pressure);
        List<Series> series = new ArrayList<>();
        List<Chart.Key> key = new ArrayList<>();
        List<Panel.Mark> marks = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        if (glide) {
            series.add(new Series(Style.SECOND, dew, "", 0));
            key.add(new Chart.Key(Style.SECOND, "dew point: superheat counts from it"));
        }
        series.add(new Series(Style.FIRST, bubble, "", 0));
        key.add(new Chart.Key(
                Style.FIRST, glide ? "bubble point: subcooling counts from it" : "liquid and vapor together"));
        for (Saturation here : marked) {
            if (!named) {
                points(here, temperature, pressure, marks);
                continue;
            }
            mark(
                    here.bubble(),
                    glide ? "bubble point" : "saturation",
                    Style.FIRST,
                    pressure,
                    temperature,
                    marks,
                    notes);
            if (glide) {
                mark(here.dew(), "dew point", Style.SECOND, pressure, temperature, marks, notes);
            }
        }
        List<Vertex> all = Stream.concat(
                        Stream.concat(bubble.stream(), dew.stream()),
                        marks.stream().map(Panel.Mark::at))
                .toList();
        Panel panel = new Panel(
                "",
                around(
                        "Temperature, " + temperature.symbol(),
                        all.stream().map(Vertex::x).toList()),
                pressures(pressure, all.stream().map(Vertex::y).toList()),
                series,
                marks);
        Saturation first = line.get(0);
        Saturation last = line.get(line.size() - 1);
        return new Chart(
                input.equilibrium().refrigerant().designation() + ": saturation pressure over temperature",
                glide
                        ? "A blend with glide: at one pressure it starts to boil at the bubble point and ends at the dew "
                                + "point."
                        : "At a temperature liquid and vapor are together at one pressure.",
                "Saturation pressure over temperature. At the left end bubble point "
                        + words(first.bubble(), temperature, pressure)
                        + ", dew point " + words(first.dew(), temperature, pressure)
                        + "; at the right end bubble point "
                        + words(last.bubble(), temperature, pressure) + ", dew point "
                        + words(last.dew(), temperature, pressure) + ".",
                1,
                470,
                List.of(panel),
                key,
                notes,
                pressure.unit().reference() == PressureReference.GAUGE
                        ? "Gauge pressures count from "
                                + new Measure(out.absolute(), QuantityKind.PRESSURE)
                                        .words(out.atmosphere().pressure()) + " of surrounding air."
                        : "Pressures are absolute.");
    }

    /** Rings at the rows of a table. */
    private static void points(Saturation row, Measure temperature, Measure pressure, List<Panel.Mark> marks) {
        vertices(Stream.of(row.bubble(), row.dew()), temperature, pressure)
                .forEach(at -> marks.add(new Panel.Mark(Style.FIFTH, at, "")));
    }

    private static void mark(
            State state,
            String name,
            Style style,
            Measure pressure,
            Measure temperature,
            List<Panel.Mark> marks,
            List<Note> notes) {
        marks.add(new Panel.Mark(
                style, new Vertex(temperature.of(state.temperature()), pressure.of(state.pressure())), name));
        notes.add(new Note(name, List.of(words(state, temperature, pressure))));
    }

    private static String words(State state, Measure temperature, Measure pressure) {
        return temperature.words(state.temperature()) + ", " + pressure.words(state.pressure());
    }

    private static List<Vertex> vertices(Stream<State> states, Measure temperature, Measure pressure) {
        return states.map(state -> new Vertex(temperature.of(state.temperature()), pressure.of(state.pressure())))
                .toList();
    }

    private static Axis pressures(Measure pressure, List<Double> values) {
        double lowest = values.stream().min(Double::compare).orElseThrow();
        double highest = values.stream().max(Double::compare).orElseThrow();
        String label = pressure.symbol();
        return pressure.unit().reference() == PressureReference.ABSOLUTE && lowest > 0
                ? Axis.logarithmic("Absolute pressure, " + label, lowest * 0.93, highest * 1.08)
                : around("Gauge pressure, " + label, values);
    }

    /** An axis with room on both sides. */
    static Axis around(String label, List<Double> values) {
        double lowest = values.stream().min(Double::compare).orElseThrow();
        double highest = values.stream().max(Double::compare).orElseThrow();
        double room = Math.max(ROOM * (highest - lowest), 1e-3 * Math.abs(highest) + 1e-9);
        return Axis.linear(label, lowest - room, highest + room, 6);
    }

    /** Enthalpy and volume of superheated vapor. */
    private static Chart vapor(Input<?> input, PropertyTable.SuperheatResult table) {
        Output out = input.output();
        Measure temperature = new Measure(out, QuantityKind.TEMPERATURE);
        Measure enthalpy = new Measure(out, QuantityKind.SPECIFIC_ENERGY);
        Measure volume = new Measure(out, QuantityKind.SPECIFIC_VOLUME);
        Measure pressure = new Measure(out, QuantityKind.PRESSURE);
        List<State> states =
                table.rows().stream().map(PropertyTable.SuperheatRow::state).toList();
        State dew = table.saturation().dew();
        List<Panel> panels = List.of(
                property("Specific enthalpy", temperature, enthalpy, states, dew),
                property("Specific volume", temperature, volume, states, dew));
        return new Chart(
                input.equilibrium().refrigerant().designation() + ": superheated vapor",
                "At " + pressure.words(dew.pressure()) + ", dew point " + temperature.words(dew.temperature()) + '.',
                "Specific enthalpy and specific volume of superheated vapor over temperature at "
                        + pressure.words(dew.pressure()) + ", from "
                        + temperature.words(states.get(0).temperature())
                        + " to "
                        + temperature.words(states.get(states.size() - 1).temperature()) + '.',
                1,
                230,
                panels,
                List.of(new Chart.Key(Style.FIRST, "superheated vapor")),
                List.of(),
                "A ring stands at the dew point.");
    }

    private static Panel property(String name, Measure temperature, Measure measure, List<State> states, State dew) {
        List<Vertex> line = states.stream()
                .map(state -> vertex(temperature, measure, state))
                .toList();
        Vertex start = vertex(temperature, measure, dew);
        List<Vertex> all = Stream.concat(Stream.of(start), line.stream()).toList();
        return new Panel(
                "",
                around(
                        "Temperature, " + temperature.symbol(),
                        all.stream().map(Vertex::x).toList()),
                around(
                        name + ", " + measure.symbol(),
                        all.stream().map(Vertex::y).toList()),
                List.of(Series.of(Style.FIRST, line)),
                List.of(new Panel.Mark(Style.IDEAL, start, "")));
    }

    private static Vertex vertex(Measure temperature, Measure measure, State state) {
        double value =
                measure.kind() == QuantityKind.SPECIFIC_VOLUME ? state.specificVolume() : state.specificEnthalpy();
        return new Vertex(temperature.of(state.temperature()), measure.of(value));
    }
}
