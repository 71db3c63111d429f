package io.loopstate.web.chart;

import io.loopstate.web.chart.Style.Symbol;
import java.util.ArrayList;
import java.util.List;

/** Places and lengths as text, in hundredths of a pixel. */
final class Pixels {
    private static final double HUNDREDTHS = 100;
    /** Widths of characters of a usual sans-serif face, in em: estimates, for the placing of text. */
    private static final double DIGIT = 0.56;

    private static final double NARROW = 0.3;
    private static final double CAPITAL = 0.7;
    private static final double WIDE = 0.9;
    private static final double LOWER = 0.54;

    private Pixels() {}

    static String text(double value) {
        long hundredths = Math.round(value * HUNDREDTHS);
        String sign = hundredths < 0 ? "-" : "";
        long size = Math.abs(hundredths);
        long rest = size % 100;
        String whole = sign + size / 100;
        if (rest == 0) {
            return size == 0 ? "0" : whole;
        }
        return rest % 10 == 0 ? whole + '.' + rest / 10 : whole + (rest < 10 ? ".0" : ".") + rest;
    }

    /** The data of a path through places. */
    static String path(List<Vertex> line) {
        StringBuilder path = new StringBuilder();
        String last = "";
        for (Vertex place : line) {
            String next = text(place.x()) + ' ' + text(place.y());
            if (!next.equals(last)) {
                path.append(path.length() == 0 ? "M" : "L").append(next);
            }
            last = next;
        }
        return path.toString();
    }

    /** The data of a path around a symbol; a circle is no path. */
    static String symbol(Symbol symbol, double x, double y, double radius) {
        double[][] corners = switch (symbol) {
            case SQUARE -> new double[][] {{-0.9, -0.9}, {0.9, -0.9}, {0.9, 0.9}, {-0.9, 0.9}};
            case TRIANGLE -> new double[][] {{0, -1.15}, {1.1, 0.85}, {-1.1, 0.85}};
            case DIAMOND -> new double[][] {{0, -1.3}, {1.3, 0}, {0, 1.3}, {-1.3, 0}};
            case NONE, DISC, RING -> new double[0][];
        };
        List<Vertex> outline = new ArrayList<>();
        for (double[] corner : corners) {
            outline.add(new Vertex(x + radius * corner[0], y + radius * corner[1]));
        }
        return path(outline) + 'Z';
    }

    /** Estimated width of a text. */
    static double width(String text, double size) {
        double em = 0;
        for (int i = 0; i < text.length(); i++) {
            em += em(text.charAt(i));
        }
        return em * size;
    }

    private static double em(char c) {
        if ("iljtfrI.,:;'|!()[]/ ·°-".indexOf(c) >= 0) {
            return NARROW;
        }
        if (c >= '0' && c <= '9' || c == '=' || c == '+') {
            return DIGIT;
        }
        return "mwMW%@".indexOf(c) >= 0 ? WIDE : Character.isUpperCase(c) ? CAPITAL : LOWER;
    }

    /** Lines of a text that is not to be wider than this. */
    static List<String> wrapped(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.isEmpty() ? new String[0] : text.split(" ")) {
            if (line.length() > 0 && width(line + " " + word, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }
}
