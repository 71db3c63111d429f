package io.loopstate.web.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds room for labels within one panel: on no strong line, on no symbol and on no other label. */
final class Labels {
    static final double SIZE = 12;
    static final double MARK_SIZE = 15;
    private static final double[] DISTANCES = {9, 15, 23};
    private static final double[] ANGLES = {-45, 0, 45, -90, 90, -135, 180, 135};
    /** Where else on a line a tag is tried, as shares of its length from the place wanted. */
    private static final double[] SHIFTS = {0, 0.04, -0.04, 0.09, -0.09, 0.15, -0.15, 0.23, -0.23, 0.34, -0.34};

    private static final double MARGIN = 2;

    private final Rectangle panel;
    private final List<Rectangle> taken = new ArrayList<>();
    private final List<List<Vertex>> strong = new ArrayList<>();

    Labels(Rectangle panel) {
        this.panel = panel;
    }

    /** No label may stand on this line. */
    void keepOff(List<Vertex> line) {
        strong.add(line);
    }

    /** No label may stand here. */
    void take(Rectangle area) {
        taken.add(area);
    }

    /** Room beside a place, the place with the least in its way where there is none. */
    Rectangle beside(Vertex place, String text) {
        double width = Pixels.width(text, MARK_SIZE);
        Rectangle best = null;
        int least = Integer.MAX_VALUE;
        for (double distance : DISTANCES) {
            for (double angle : ANGLES) {
                double x = place.x() + (distance + width / 2) * Math.cos(Math.toRadians(angle));
                double y = place.y() + (distance + MARK_SIZE / 3) * Math.sin(Math.toRadians(angle));
                Rectangle area = centered(x, y, width, MARK_SIZE);
                int inTheWay = inTheWay(area) + (panel.holds(area) ? 0 : 10);
                if (inTheWay < least) {
                    least = inTheWay;
                    best = area;
                }
            }
        }
        taken.add(best);
        return best;
    }

    /** Room on a line near a share of its length, empty where there is none. */
    Optional<Rectangle> on(List<Vertex> line, String text, double at) {
        double width = Pixels.width(text, SIZE);
        if (length(line) < 1.6 * SIZE) {
            return Optional.empty();
        }
        for (double shift : SHIFTS) {
            double share = at + shift;
            if (share < 0 || share > 1) {
                continue;
            }
            Vertex place = along(line, share);
            Rectangle area = inside(centered(place.x(), place.y(), width, SIZE));
            if (area.grown(1).holds(place) && inTheWay(area.grown(MARGIN)) == 0) {
                taken.add(area);
                return Optional.of(area);
            }
        }
        return Optional.empty();
    }

    private static Rectangle centered(double x, double y, double width, double size) {
        return new Rectangle(x - width / 2 - 1, y - size / 2, width + 2, size);
    }

    /** Moved into the panel. */
    private Rectangle inside(Rectangle area) {
        double left = Math.min(Math.max(area.left(), panel.left() + MARGIN), panel.right() - area.width() - MARGIN);
        double top = Math.min(Math.max(area.top(), panel.top() + MARGIN), panel.bottom() - area.height() - MARGIN);
        return new Rectangle(left, top, area.width(), area.height());
    }

    private int inTheWay(Rectangle area) {
        int count = 0;
        for (Rectangle other : taken) {
            count += other.overlaps(area) ? 5 : 0;
        }
        for (List<Vertex> line : strong) {
            count += area.cut(line).isEmpty() ? 0 : 1;
        }
        return count;
    }

    private static double length(List<Vertex> line) {
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            length += distance(line.get(i - 1), line.get(i));
        }
        return length;
    }

    private static double distance(Vertex a, Vertex b) {
        return Math.hypot(b.x() - a.x(), b.y() - a.y());
    }

    private static Vertex along(List<Vertex> line, double share) {
        double left = share * length(line);
        for (int i = 1; i < line.size(); i++) {
            Vertex a = line.get(i - 1);
            Vertex b = line.get(i);
            double step = distance(a, b);
            if (step > 0 && left <= step) {
                double part = left / step;
                return new Vertex(a.x() + part * (b.x() - a.x()), a.y() + part * (b.y() - a.y()));
            }
            left -= step;
        }
        return line.get(line.size() - 1);
    }
}
