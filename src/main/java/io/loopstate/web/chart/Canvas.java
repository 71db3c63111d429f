package io.loopstate.web.chart;

import io.loopstate.web.chart.Style.Symbol;
import java.util.ArrayList;
import java.util.List;

/** Gathers what a picture consists of. Lives for one picture in one thread. */
final class Canvas {
    private static final String WHITE = "#ffffff";
    private static final double GRID_WIDTH = 0.8;
    /** From the middle of a text to its base line, as a share of its size. */
    private static final double BASE = 0.36;

    final List<Drawing.Frame> frames = new ArrayList<>();
    final List<Drawing.Stroke> grid = new ArrayList<>();
    final List<Drawing.Stroke> strokes = new ArrayList<>();
    final List<Drawing.Box> boxes = new ArrayList<>();
    final List<Drawing.Shape> shapes = new ArrayList<>();
    final List<Drawing.Text> texts = new ArrayList<>();

    void frame(Rectangle area) {
        frames.add(new Drawing.Frame(
                Pixels.text(area.left()),
                Pixels.text(area.top()),
                Pixels.text(area.width()),
                Pixels.text(area.height())));
    }

    void grid(List<Vertex> line, String color) {
        grid.add(new Drawing.Stroke(Pixels.path(line), color, Pixels.text(GRID_WIDTH), "", ""));
    }

    void stroke(Style style, List<Vertex> line, String title) {
        strokes.add(new Drawing.Stroke(
                Pixels.path(line), style.color(), Pixels.text(style.width()), style.dash(), Text.clean(title)));
    }

    void symbol(Style style, Vertex at, double radius) {
        Symbol symbol = style.symbol();
        boolean circle = symbol == Symbol.DISC || symbol == Symbol.RING;
        if (symbol != Symbol.NONE) {
            shapes.add(new Drawing.Shape(
                    Pixels.text(at.x()),
                    Pixels.text(at.y()),
                    Pixels.text(radius),
                    circle ? "" : Pixels.symbol(symbol, at.x(), at.y(), radius),
                    symbol == Symbol.RING ? WHITE : style.color(),
                    style.color()));
        }
    }

    void text(double x, double y, String anchor, double size, String color, String text) {
        texts.add(text(x, y, anchor, size, "normal", color, false, text));
    }

    void bold(double x, double y, double size, String color, String text) {
        texts.add(text(x, y, "start", size, "bold", color, false, text));
    }

    /** Reading upward, around its middle. */
    void turned(double x, double y, double size, String color, String text) {
        texts.add(text(x, y, "middle", size, "normal", color, true, text));
    }

    /** A text in the middle of an area that it covers. */
    void label(Rectangle area, double size, String color, boolean bold, String text) {
        boxes.add(new Drawing.Box(
                Pixels.text(area.left()),
                Pixels.text(area.top()),
                Pixels.text(area.width()),
                Pixels.text(area.height())));
        double x = area.left() + area.width() / 2;
        double y = area.top() + area.height() / 2 + BASE * size;
        texts.add(text(x, y, "middle", size, bold ? "bold" : "normal", color, false, text));
    }

    private static Drawing.Text text(
            double x, double y, String anchor, double size, String weight, String color, boolean turned, String text) {
        return new Drawing.Text(
                Pixels.text(x), Pixels.text(y), anchor, Pixels.text(size), weight, color, turned, Text.clean(text));
    }
}
