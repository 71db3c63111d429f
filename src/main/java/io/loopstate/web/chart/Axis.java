package io.loopstate.web.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * An axis with its range and marks.
 *
 * @param label name and unit
 * @param logarithmic whether equal ratios take equal lengths; the range is then positive
 */
public record Axis(String label, boolean logarithmic, double from, double to, List<Tick> ticks) {
    public Axis {
        if (!(to > from) || logarithmic && !(from > 0)) {
            throw new IllegalArgumentException("no range: " + from + " to " + to);
        }
        ticks = List.copyOf(ticks);
    }

    /** With some marks at round numbers. */
    public static Axis linear(String label, double from, double to, int wanted) {
        return new Axis(label, false, from, to, Ticks.linear(from, to, wanted));
    }

    /** With marks at round numbers of every decade. */
    public static Axis logarithmic(String label, double from, double to) {
        return new Axis(label, true, from, to, Ticks.logarithmic(from, to));
    }

    /** With a name for every case: case i stands at i + 0.5, from the top down where it is drawn up. */
    public static Axis cases(String label, List<String> names) {
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            ticks.add(new Tick(names.size() - i - 0.5, names.get(i)));
        }
        return new Axis(label, false, 0, names.size(), ticks);
    }

    /** Share of the axis at a number. */
    double share(double value) {
        return logarithmic ? Math.log(value / from) / Math.log(to / from) : (value - from) / (to - from);
    }
}
