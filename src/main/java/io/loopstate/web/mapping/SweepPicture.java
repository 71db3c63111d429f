package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.units.UnitCatalog;
import io.loopstate.units.UnitToken;
import io.loopstate.web.chart.Chart;
import io.loopstate.web.chart.Panel;
import io.loopstate.web.chart.Series;
import io.loopstate.web.chart.Style;
import io.loopstate.web.chart.Svg;
import io.loopstate.web.chart.Vertex;
import io.loopstate.web.form.Leaf;
import io.loopstate.web.form.Leaves;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.ProblemException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Values over one varied input, a panel for each value and a line for each value of the other input. */
public final class SweepPicture {
    private static final int MOST_PANELS = 4;
    /** Of what all points share, in the subtitle. */
    private static final int MOST_CONDITIONS = 16;

    private static final int LONGEST = 40;
    /** More symbols on a line run into each other. */
    private static final int MOST_SYMBOLS = 41;

    private static final List<Style> STYLES =
            List.of(Style.FIRST, Style.SECOND, Style.THIRD, Style.FOURTH, Style.FIFTH);

    private final String operation;
    private final JsonNode request;
    private final List<VariedInput> varied;
    private final int across;

    /**
     * A point of the sweep.
     *
     * @param inputs values of the varied inputs
     * @param values of the reply by name; none where it was refused
     */
    public record Point(List<JsonNode> inputs, Map<String, Leaf> values) {
        /** Copies the list. */
        public Point {
            inputs = List.copyOf(inputs);
        }
    }

    /** One value over the points. */
    private record Plotted(String name, String label, Optional<String> unit) {}

    private SweepPicture(String operation, JsonNode request, List<VariedInput> varied, int across) {
        this.operation = operation;
        this.request = request;
        this.varied = varied;
        this.across = across;
    }

    /**
     * Checks before anything is calculated whether there is something to draw.
     *
     * @throws ProblemException if no input is a number, if there are too many lines, or if no value is picked
     */
    public static SweepPicture of(String operation, JsonNode request, List<VariedInput> varied, List<String> picks) {
        int across = IntStream.range(0, varied.size())
                .filter(i -> unit(varied.get(i)).isPresent())
                .boxed()
                .max(Comparator.comparingInt(
                                (Integer i) -> varied.get(i).values().size())
                        .thenComparingInt(i -> i))
                .orElseThrow(() -> ProblemException.invalid(
                        Fault.at(Pointer.child(Pointer.ROOT, "vary"), "not-applicable", "No varied input has an axis.")
                                .withAllowed("one input at least whose values are numbers in one unit")));
        if (varied.size() > 1 && varied.get(1 - across).values().size() > STYLES.size()) {
            throw ProblemException.invalid(
                    Fault.at(Pointer.child(Pointer.ROOT, "vary"), "too-many-rows", "The picture has too many lines.")
                            .withGot(varied.get(1 - across).values().size() + " values of "
                                    + varied.get(1 - across).name())
                            .withAllowed("at most " + STYLES.size() + " values of one of the inputs"));
        }
        if (picks.isEmpty()) {
            throw ProblemException.invalid(
                    Fault.at(Pointer.child(Pointer.ROOT, "pick"), "missing", "A picture shows the picked values.")
                            .withAllowed("1 to " + MOST_PANELS + " values in numbers"));
        }
        return new SweepPicture(operation, request, varied, across);
    }

    /**
     * The picture.
     *
     * @throws ProblemException if the picked values are no numbers, or too many
     */
    public String draw(List<Point> points) {
        List<Plotted> plotted = plotted(points);
        if (plotted.isEmpty() || plotted.size() > MOST_PANELS) {
            throw ProblemException.invalid(
                    Fault.at(Pointer.child(Pointer.ROOT, "pick"), "wrong-value", "These values make no picture.")
                            .withGot(plotted.size() + " values in numbers")
                            .withAllowed("1 to " + MOST_PANELS + " values in numbers, of points that are not refused"));
        }
        long refused = points.stream().filter(point -> point.values().isEmpty()).count();
        VariedInput x = varied.get(across);
        String title =
                plotted.stream().map(Plotted::label).collect(Collectors.joining(", ")) + " over " + words(x.name());
        List<Panel> panels = plotted.stream().map(value -> panel(value, points)).toList();
        return Svg.of(new Chart(
                title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1),
                conditions(),
                description(plotted, points, refused),
                1,
                panels.size() == 1 ? 400 : 235,
                panels,
                key(),
                List.of(),
                (refused == 0
                                ? ""
                                : refused + " of " + points.size()
                                        + " points were refused and leave gaps; the table says why. ")
                        + "The axes do not start at zero."));
    }

    private List<Plotted> plotted(List<Point> points) {
        Map<String, Plotted> found = new LinkedHashMap<>();
        points.forEach(point -> point.values().forEach((name, leaf) -> {
            if (leaf.value().isNumber()) {
                found.putIfAbsent(name, new Plotted(name, label(leaf.path()), leaf.unit()));
            }
        }));
        return List.copyOf(found.values());
    }

    private Panel panel(Plotted value, List<Point> points) {
        List<Series> series = new ArrayList<>();
        List<Panel.Mark> marks = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        List<JsonNode> lines = lines();
        boolean symbols = varied.get(across).values().size() <= MOST_SYMBOLS;
        for (int line = 0; line < Math.max(1, lines.size()); line++) {
            Style style = STYLES.get(line);
            List<Vertex> run = new ArrayList<>();
            for (Point point : ofLine(points, lines, line)) {
                Leaf leaf = point.values().get(value.name());
                if (leaf == null || !leaf.value().isNumber()) {
                    end(run, style, symbols, series, marks);
                    run = new ArrayList<>();
                    continue;
                }
                Vertex vertex = new Vertex(
                        number(point.inputs().get(across)), leaf.value().doubleValue());
                widths.add(vertex.x());
                heights.add(vertex.y());
                run.add(vertex);
            }
            end(run, style, symbols, series, marks);
        }
        VariedInput x = varied.get(across);
        return new Panel(
                "",
                PropertyPictures.around(axis(words(x.name()), unit(x).filter(token -> !token.isEmpty())), widths),
                PropertyPictures.around(axis(value.label(), value.unit()), heights),
                series,
                marks);
    }

    /** A line up to a gap; a point on its own is a symbol. */
    private static void end(
            List<Vertex> run, Style style, boolean symbols, List<Series> series, List<Panel.Mark> marks) {
        if (run.size() > 1) {
            series.add(Series.of(style, run));
        }
        if (symbols || run.size() == 1) {
            run.forEach(vertex -> marks.add(new Panel.Mark(style, vertex, "")));
        }
    }

    private List<Point> ofLine(List<Point> points, List<JsonNode> lines, int line) {
        return points.stream()
                .filter(point ->
                        lines.isEmpty() || point.inputs().get(1 - across).equals(lines.get(line)))
                .sorted(Comparator.comparingDouble(
                        point -> number(point.inputs().get(across))))
                .toList();
    }

    private List<JsonNode> lines() {
        return varied.size() == 1
                ? List.of()
                : varied.get(1 - across).values().stream().distinct().toList();
    }

    private List<Chart.Key> key() {
        List<JsonNode> lines = lines();
        return IntStream.range(0, lines.size())
                .mapToObj(i -> new Chart.Key(
                        STYLES.get(i), true, words(varied.get(1 - across).name()) + ' ' + text(lines.get(i))))
                .toList();
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
    }

    /** What all points share. */
    private String conditions() {
        String shared = Leaves.of(request).stream()
                .limit(MOST_CONDITIONS)
                .map(leaf -> words(leaf.name())
                        + ' '
                        + shortened(leaf.value().asText())
                        + leaf.unit().map(token -> ' ' + symbol(token)).orElse(""))
                .collect(Collectors.joining(", "));
        return operation + (shared.isEmpty() ? "." : " with " + shared + '.');
    }

    private String description(List<Plotted> plotted, List<Point> points, long refused) {
        VariedInput x = varied.get(across);
        StringBuilder words = new StringBuilder(points.size() + " points, " + refused + " of them refused. ");
        words.append("The horizontal axis is ").append(axis(words(x.name()), unit(x).filter(t -> !t.isEmpty())));
        words.append(
                varied.size() == 1
                        ? ". "
                        : "; a line for each " + words(varied.get(1 - across).name()) + ". ");
        for (Plotted value : plotted) {
            double[] all = points.stream()
                    .map(point -> point.values().get(value.name()))
                    .filter(leaf -> leaf != null && leaf.value().isNumber())
                    .mapToDouble(leaf -> leaf.value().doubleValue())
                    .sorted()
                    .toArray();
            words.append(axis(value.label(), value.unit()))
                    .append(": ")
                    .append(Measure.figures(all[0]))
                    .append(" to ")
                    .append(Measure.figures(all[all.length - 1]))
                    .append(". ");
        }
        return words.toString().strip();
    }

    /** The one unit of all values, empty text for plain numbers; empty where they are no numbers of one unit. */
    private static Optional<String> unit(VariedInput input) {
        List<String> units = input.values().stream()
                .map(value -> value.isNumber()
                        ? ""
                        : value.path("value").isNumber() ? value.path("unit").asText() : "?")
                .distinct()
                .toList();
        return units.size() == 1 && !units.get(0).equals("?") ? Optional.of(units.get(0)) : Optional.empty();
    }

    private static double number(JsonNode value) {
        return value.isNumber() ? value.doubleValue() : value.path("value").doubleValue();
    }

    private static String text(JsonNode value) {
        return value.isObject()
                ? value.path("value").asText() + ' ' + symbol(value.path("unit").asText())
                : value.asText();
    }

    private static String axis(String words, Optional<String> unit) {
        return words + unit.map(token -> ", " + symbol(token)).orElse("");
    }

    private static String symbol(String token) {
        return UnitCatalog.named(token).map(UnitToken::symbol).orElse(token);
    }

    /** A last name of several words says enough: {@code coefficientOfPerformance}; others need what they belong to. */
    private static String label(List<String> path) {
        String last = path.get(path.size() - 1);
        return last.equals(last.toLowerCase(Locale.ROOT)) ? words(String.join(" ", path)) : words(last);
    }

    private static String words(String name) {
        return name.replaceAll("([a-z0-9])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }
}
