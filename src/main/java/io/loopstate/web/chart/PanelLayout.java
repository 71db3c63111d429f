package io.loopstate.web.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts one panel into its rectangle. */
final class PanelLayout {
    static final double TICK_SIZE = 12;
    static final double LABEL_SIZE = 13;
    private static final double RADIUS = 4.2;
    private static final String GRID = "#e3e3e3";
    private static final String INK = "#1c1c1c";
    private static final double TICK = 5;
    /** Least distance of the labels of an axis that goes up. */
    private static final double LEAST = 15;

    private final Panel panel;
    private final Rectangle plane;
    private final Canvas canvas;
    private final Labels labels;

    PanelLayout(Panel panel, Rectangle plane, Canvas canvas) {
        this.panel = panel;
        this.plane = plane;
        this.canvas = canvas;
        this.labels = new Labels(plane);
    }

    /** Width that the labels of an axis that goes up take. */
    static double labelWidth(Panel panel) {
        return panel.y().ticks().stream()
                .mapToDouble(tick -> Pixels.width(tick.label(), TICK_SIZE))
                .max()
                .orElse(0);
    }

    /** The picture's place of a place on the axes. */
    Vertex place(Vertex at) {
        return new Vertex(
                plane.left() + plane.width() * panel.x().share(at.x()),
                plane.bottom() - plane.height() * panel.y().share(at.y()));
    }

    void draw(boolean withLabels) {
        canvas.frame(plane);
        across();
        up(withLabels);
        List<List<Vertex>> lines = panel.series().stream()
                .map(series -> series.vertices().stream().map(this::place).toList())
                .toList();
        for (int i = 0; i < lines.size(); i++) {
            strokes(panel.series().get(i), lines.get(i));
        }
        panel.marks().forEach(mark -> symbol(mark.style(), place(mark.at())));
        panel.marks().forEach(this::label);
        for (int i = 0; i < lines.size(); i++) {
            tag(panel.series().get(i), lines.get(i));
        }
    }

    private void across() {
        double base = plane.bottom();
        double free = Double.NEGATIVE_INFINITY;
        for (Tick tick : panel.x().ticks()) {
            double x = place(new Vertex(tick.value(), panel.y().from())).x();
            grid(tick, new Vertex(x, plane.top()), new Vertex(x, base), new Vertex(x, base + length(tick)));
            double half = Pixels.width(tick.label(), TICK_SIZE) / 2;
            if (x - half > free && !tick.label().isEmpty()) {
                canvas.text(x, base + 19, "middle", TICK_SIZE, INK, tick.label());
                free = x + half + 6;
            }
        }
        canvas.text(
                plane.left() + plane.width() / 2,
                base + 40,
                "middle",
                LABEL_SIZE,
                INK,
                panel.x().label());
    }

    private void up(boolean withLabels) {
        double free = Double.POSITIVE_INFINITY;
        for (Tick tick : panel.y().ticks()) {
            double y = place(new Vertex(panel.x().from(), tick.value())).y();
            double left = plane.left();
            grid(tick, new Vertex(left, y), new Vertex(plane.right(), y), new Vertex(left - length(tick), y));
            boolean room = Math.abs(free - y) >= LEAST;
            if (withLabels && room && !tick.label().isEmpty()) {
                canvas.text(left - 9, y + 4, "end", TICK_SIZE, INK, tick.label());
                free = y;
            }
        }
        if (withLabels && !panel.y().label().isEmpty()) {
            double x = plane.left() - labelWidth(panel) - 22;
            canvas.turned(
                    x,
                    plane.top() + plane.height() / 2,
                    LABEL_SIZE,
                    INK,
                    panel.y().label());
        }
        if (!panel.heading().isEmpty()) {
            canvas.bold(plane.left(), plane.top() - 9, LABEL_SIZE, INK, panel.heading());
        }
    }

    private static double length(Tick tick) {
        return tick.label().isEmpty() ? TICK / 2 : TICK;
    }

    private void grid(Tick tick, Vertex from, Vertex to, Vertex outside) {
        if (!tick.label().isEmpty()) {
            canvas.grid(List.of(from, to), GRID);
        }
        Vertex edge = outside.x() == from.x() ? to : from;
        canvas.grid(List.of(edge, outside), INK);
    }

    private void strokes(Series series, List<Vertex> line) {
        Style style = series.style();
        for (List<Vertex> part : plane.grown(0.01).cut(line)) {
            canvas.stroke(style, part, series.tag());
            if (style.strong()) {
                labels.keepOff(part);
            }
        }
    }

    private void symbol(Style style, Vertex place) {
        if (plane.grown(0.01).holds(place)) {
            canvas.symbol(style, place, RADIUS);
            labels.take(new Rectangle(place.x() - RADIUS, place.y() - RADIUS, 2 * RADIUS, 2 * RADIUS));
        }
    }

    private void label(Panel.Mark mark) {
        Vertex place = place(mark.at());
        if (!mark.label().isEmpty() && plane.grown(0.01).holds(place)) {
            Rectangle area = labels.beside(place, mark.label());
            canvas.label(area, Labels.MARK_SIZE, mark.style().color(), true, mark.label());
        }
    }

    private void tag(Series series, List<Vertex> line) {
        if (series.tag().isEmpty()) {
            return;
        }
        List<List<Vertex>> parts = new ArrayList<>(plane.cut(line));
        parts.stream()
                .map(part -> labels.on(part, series.tag(), series.tagAt()))
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresent(
                        area -> canvas.label(area, Labels.SIZE, series.style().color(), false, series.tag()));
    }
}
