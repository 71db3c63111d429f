package io.loopstate.web.mapping;

import io.loopstate.engine.compression.ClosedCylinder;
import io.loopstate.engine.compression.CompressionProcess;
import io.loopstate.engine.compression.Staging;
import io.loopstate.engine.diagram.ProcessLine;
import io.loopstate.engine.property.State;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.chart.Axis;
import io.loopstate.web.chart.Chart;
import io.loopstate.web.chart.Note;
import io.loopstate.web.chart.Panel;
import io.loopstate.web.chart.Series;
import io.loopstate.web.chart.Style;
import io.loopstate.web.chart.Vertex;
import io.loopstate.web.dto.ChartName;
import io.loopstate.web.dto.CylinderRequest;
import io.loopstate.web.dto.ProcessRequest;
import io.loopstate.web.dto.StagingRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Compressions: on property diagrams, and the closed cylinder as pressure over volume. */
public final class CompressionPictures {
    /** One compression. */
    public static final Picture<ProcessRequest, CompressionProcess.Spec, CompressionProcess.Result> PROCESS =
            new Picture<>(ProcessMapping.OPERATION, true, CompressionPictures::process);

    /** Two stages beside one. */
    public static final Picture<StagingRequest, Staging.Spec, Staging.Result> STAGING =
            new Picture<>(StagingMapping.OPERATION, true, CompressionPictures::staging);

    /** A closed cylinder. */
    public static final Picture<CylinderRequest, ClosedCylinder.Spec, ClosedCylinder.Result> CYLINDER =
            Picture.of(CylinderMapping.OPERATION, CompressionPictures::cylinder);

    /** Share of the largest number that an axis shows beyond it. */
    private static final double ROOM = 0.1;

    /** Share of the axis by which the ideal gas has to end elsewhere to be shown. */
    private static final double APART = 0.01;

    private static final int CURVE = 61;

    private CompressionPictures() {}

    private static Chart process(Input<ProcessRequest> input, CompressionProcess.Result result, ChartName name) {
        CompressionProcess.Figures figures = result.figures();
        Measure energy = new Measure(input.output(), QuantityKind.SPECIFIC_ENERGY);
        String subtitle = "Pressure ratio " + Measure.figures(figures.pressureRatio()) + ", work "
                + energy.words(figures.work()) + ", isentropic efficiency "
                + Measure.figures(figures.isentropicEfficiency()) + '.';
        return new CycleChart(input.equilibrium(), CyclePictures.plane(name), result.points(), input.output())
                .chart("the compression", subtitle);
    }

    private static Chart staging(Input<StagingRequest> input, Staging.Result result, ChartName name) {
        Staging.Stages stages = result.stages();
        State suction = result.suction();
        State between = stages.low().outlet();
        State discharge = stages.high().outlet();
        State single = result.single().outlet();
        StatesChart chart = new StatesChart(
                input.equilibrium(),
                CyclePictures.plane(name),
                List.of(suction, between, stages.cooled(), discharge, single),
                input.output());
        chart.process(Style.IDEAL, ProcessLine.Kind.COMPRESSION, suction, single);
        chart.process(Style.PROCESS, ProcessLine.Kind.COMPRESSION, suction, between);
        chart.process(Style.PROCESS, ProcessLine.Kind.HEAT, between, stages.cooled());
        chart.process(Style.PROCESS, ProcessLine.Kind.COMPRESSION, stages.cooled(), discharge);
        chart.place("1", "suction", suction, Style.PROCESS);
        chart.place("2", "outlet of the first stage", between, Style.PROCESS);
        chart.place("3", "after the intercooler", stages.cooled(), Style.PROCESS);
        chart.place("4", "outlet of the second stage", discharge, Style.PROCESS);
        chart.place("5", "outlet in one stage", single, Style.IDEAL);
        Measure pressure = new Measure(input.output(), QuantityKind.PRESSURE);
        Measure energy = new Measure(input.output(), QuantityKind.SPECIFIC_ENERGY);
        return chart.chart(
                "two stages",
                "the same in one stage",
                "Intermediate pressure " + pressure.words(stages.intermediatePressure()) + ". Work "
                        + energy.words(stages.work()) + ", in one stage "
                        + energy.words(result.single().work()) + '.');
    }

    private static Chart cylinder(Input<CylinderRequest> input, ClosedCylinder.Result result) {
        Output absolute = input.output().absolute();
        Measure pressure = new Measure(absolute, QuantityKind.PRESSURE);
        Measure volume = new Measure(absolute, QuantityKind.VOLUME);
        Measure energy = new Measure(absolute, QuantityKind.ENERGY);
        List<Vertex> path = path(ClosedCylinder.calculate(curve(CylinderMapping.spec(input))), volume, pressure);
        double air = pressure.of(input.atmosphere().pressure());
        double widest = path.stream().mapToDouble(Vertex::x).max().orElseThrow() * (1 + ROOM);
        double highest =
                Math.max(air, path.stream().mapToDouble(Vertex::y).max().orElseThrow()) * (1 + ROOM);
        Vertex end = path.get(path.size() - 1);
        Vertex ideal = new Vertex(end.x(), pressure.of(result.ideal().pressure()));
        String words = input.request().path().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        List<Panel.Mark> marks = new ArrayList<>();
        double top = Math.max(highest, ideal.y() * (1 + ROOM));
        if (Math.abs(ideal.y() - end.y()) > APART * top) {
            marks.add(new Panel.Mark(Style.IDEAL, ideal, "ideal gas"));
        }
        path(result, volume, pressure).forEach(at -> marks.add(new Panel.Mark(Style.FIFTH, at, "")));
        marks.add(new Panel.Mark(Style.PROCESS, path.get(0), "1"));
        marks.add(new Panel.Mark(Style.PROCESS, end, "2"));
        Panel panel = new Panel(
                "",
                Axis.linear("Volume, " + volume.symbol(), 0, widest, 8),
                Axis.linear("Absolute pressure, " + pressure.symbol(), 0, top, 8),
                List.of(
                        new Series(
                                Style.REFERENCE,
                                List.of(new Vertex(0, air), new Vertex(widest, air)),
                                "surrounding air",
                                0.94),
                        Series.of(Style.PROCESS, path)),
                marks);
        List<Note> notes = List.of(
                note(
                        "1\u2002start",
                        pressure,
                        volume,
                        result.start(),
                        result.figures().startVolume()),
                note(
                        "2\u2002end",
                        pressure,
                        volume,
                        result.end(),
                        result.figures().endVolume()),
                new Note(
                        "work and heat",
                        List.of(
                                "work on the gas "
                                        + energy.words(result.figures().work()),
                                "heat to the gas "
                                        + energy.words(result.figures().heat()))));
        return new Chart(
                input.equilibrium().refrigerant().designation() + ": a closed cylinder in pressure over volume",
                "Path: " + words + ". Index n between the ends "
                        + Measure.figures(result.figures().index()) + '.',
                "Absolute pressure over volume of a closed cylinder on the path " + words + ", from "
                        + pressure.words(result.start().pressure()) + " and "
                        + volume.words(result.figures().startVolume()) + " to "
                        + pressure.words(result.end().pressure()) + " and "
                        + volume.words(result.figures().endVolume())
                        + ". A level line shows the pressure of the surrounding air, a ring where the ideal-gas formulas "
                        + "end.",
                1,
                470,
                List.of(panel),
                List.of(
                        new Chart.Key(Style.PROCESS, "path of the real fluid"),
                        new Chart.Key(Style.REFERENCE, "pressure of the surrounding air")),
                notes,
                "Pressures are absolute; a gauge reads what lies above the line of the surrounding air.");
    }

    private static List<Vertex> path(ClosedCylinder.Result result, Measure volume, Measure pressure) {
        return result.points().stream()
                .map(point -> new Vertex(
                        volume.of(point.volume()), pressure.of(point.state().pressure())))
                .toList();
    }

    /** The same with points close enough for a curve. */
    private static ClosedCylinder.Spec curve(ClosedCylinder.Spec spec) {
        return new ClosedCylinder.Spec(
                spec.equilibrium(),
                spec.pressure(),
                spec.temperature(),
                spec.volume(),
                spec.finalVolume(),
                spec.finalPressure(),
                spec.path(),
                spec.index(),
                CURVE,
                spec.atmosphericPressure(),
                spec.guidance(),
                false);
    }

    private static Note note(String head, Measure pressure, Measure volume, State state, double cubicMeters) {
        Measure temperature = new Measure(pressure.out(), QuantityKind.TEMPERATURE);
        return new Note(
                head,
                List.of(
                        pressure.words(state.pressure()) + ", " + temperature.words(state.temperature()),
                        volume.words(cubicMeters)));
    }
}
