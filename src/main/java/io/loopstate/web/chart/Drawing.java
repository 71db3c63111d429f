package io.loopstate.web.chart;

import java.util.List;

/**
 * A chart in pixels, numbers as text: what the template fills in. Public for the template engine alone.
 *
 * @param id of this picture among others on a page
 * @param strokes from the back to the front
 */
public record Drawing(
        String id,
        String width,
        String height,
        String title,
        String description,
        List<Frame> frames,
        List<Stroke> grid,
        List<Stroke> strokes,
        List<Box> boxes,
        List<Shape> shapes,
        List<Text> texts) {

    /** The edge of a panel. */
    public record Frame(String x, String y, String width, String height) {}

    /** A line; the dash is empty for none, the title for none. */
    public record Stroke(String path, String color, String width, String dash, String title) {}

    /** What lies under a label. */
    public record Box(String x, String y, String width, String height) {}

    /** A symbol: a circle around a place where the path is empty. */
    public record Shape(String x, String y, String radius, String path, String fill, String color) {}

    /** A text; turned where it reads upward. */
    public record Text(
            String x, String y, String anchor, String size, String weight, String color, boolean turned, String text) {}
}
