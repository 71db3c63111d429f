package io.loopstate.web.chart;

import java.util.ArrayList;
import java.util.List;

/** A rectangle of the picture, pixels; y counts down. */
record Rectangle(double left, double top, double width, double height) {
    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    boolean overlaps(Rectangle other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }

    boolean holds(Rectangle other) {
        return other.left >= left && other.right() <= right() && other.top >= top && other.bottom() <= bottom();
    }

    boolean holds(Vertex place) {
        return place.x() >= left && place.x() <= right() && place.y() >= top && place.y() <= bottom();
    }

    Rectangle grown(double by) {
        return new Rectangle(left - by, top - by, width + 2 * by, height + 2 * by);
    }

    /**
     * The part of a straight line within, empty if there is none. Liang and Barsky (1984): from memory.
     */
    List<Vertex> cut(Vertex a, Vertex b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double[] toward = {-dx, dx, -dy, dy};
        double[] room = {a.x() - left, right() - a.x(), a.y() - top, bottom() - a.y()};
        double enter = 0;
        double leave = 1;
        for (int i = 0; i < toward.length; i++) {
            if (toward[i] == 0 && room[i] < 0) {
                return List.of();
            }
            double share = room[i] / toward[i];
            if (toward[i] < 0) {
                enter = Math.max(enter, share);
            } else if (toward[i] > 0) {
                leave = Math.min(leave, share);
            }
        }
        return enter > leave
                ? List.of()
                : List.of(
                        enter == 0 ? a : new Vertex(a.x() + enter * dx, a.y() + enter * dy),
                        leave == 1 ? b : new Vertex(a.x() + leave * dx, a.y() + leave * dy));
    }

    /** The parts of a line within, in order. */
    List<List<Vertex>> cut(List<Vertex> line) {
        List<List<Vertex>> parts = new ArrayList<>();
        List<Vertex> part = new ArrayList<>();
        for (int i = 1; i < line.size(); i++) {
            List<Vertex> seen = cut(line.get(i - 1), line.get(i));
            if (seen.isEmpty()) {
                continue;
            }
            if (part.isEmpty() || !part.get(part.size() - 1).equals(seen.get(0))) {
                part = new ArrayList<>();
                part.add(seen.get(0));
                parts.add(part);
            }
            part.add(seen.get(1));
        }
        return parts;
    }
}
