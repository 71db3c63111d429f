package io.loopstate.web.chart;

import java.util.List;

/**
 * One plane with what is drawn on it.
 *
 * @param heading above it, empty where the axes say enough
 * @param series from the back to the front
 * @param marks single places, on top
 */
public record Panel(String heading, Axis x, Axis y, List<Series> series, List<Mark> marks) {
    public Panel {
        series = List.copyOf(series);
        marks = List.copyOf(marks);
    }

    /**
     * A single place with its name.
     *
     * @param style of its symbol
     * @param label short; placed where there is room
     */
    public record Mark(Style style, Vertex at, String label) {}
}
