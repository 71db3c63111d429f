package io.loopstate.web.chart;

import java.util.List;

/**
 * A line.
 *
 * @param tag short text on the line, empty for none
 * @param tagAt where on the visible line the tag is tried first, as a share of its length
 */
public record Series(Style style, List<Vertex> vertices, String tag, double tagAt) {
    public Series {
        vertices = List.copyOf(vertices);
    }

    /** A line without a tag. */
    public static Series of(Style style, List<Vertex> vertices) {
        return new Series(style, vertices, "", 0);
    }
}
