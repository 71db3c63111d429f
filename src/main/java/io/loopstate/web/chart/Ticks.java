package io.loopstate.web.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Marks at round numbers within a range: 1, 2 or 5 times a power of ten apart. */
public final class Ticks {
    private static final int[] ROUND = {1, 2, 5};
    /** Ratio of the ends from which on every decade has marks of its own. */
    private static final double DECADE = 12;
    /** Ends of a range belong to it. */
    private static final double EDGE = 1e-9;

    private Ticks() {}

    /** About as many as wanted, never more than one and a half times that. */
    public static List<Tick> linear(double from, double to, int wanted) {
        double least = (to - from) / (wanted * 1.5);
        int exponent = (int) Math.floor(Math.log10(least));
        int factor = 10;
        for (int round : ROUND) {
            if (round * Math.pow(10, exponent) >= least * (1 - EDGE)) {
                factor = round;
                break;
            }
        }
        return multiples(BigDecimal.valueOf(factor, -exponent), from, to);
    }

    private static List<Tick> multiples(BigDecimal step, double from, double to) {
        double size = step.doubleValue();
        double room = EDGE * (to - from);
        List<Tick> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil((from - room) / size); i * size <= to + room; i++) {
            BigDecimal value = step.multiply(BigDecimal.valueOf(i));
            ticks.add(new Tick(value.doubleValue(), plain(value)));
        }
        return ticks;
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0
                ? "0"
                : value.setScale(Math.max(0, value.scale())).toPlainString();
    }

    /** With a label at 1, 2 and 5 of every decade and a small mark at the other digits; a narrow range as linear. */
    public static List<Tick> logarithmic(double from, double to) {
        double ratio = to / from;
        if (ratio < DECADE) {
            return linear(from, to, 8);
        }
        boolean wide = ratio > 1e4;
        List<Tick> ticks = new ArrayList<>();
        int first = (int) Math.floor(Math.log10(from));
        int last = (int) Math.ceil(Math.log10(to));
        for (int exponent = first; exponent <= last; exponent++) {
            for (int digit = 1; digit <= 9; digit++) {
                BigDecimal value = BigDecimal.valueOf(digit, -exponent);
                boolean labeled = digit == 1 || !wide && (digit == 2 || digit == 5);
                if (value.doubleValue() >= from * (1 - EDGE) && value.doubleValue() <= to * (1 + EDGE)) {
                    ticks.add(new Tick(value.doubleValue(), labeled ? plain(value) : ""));
                }
            }
        }
        return ticks;
    }
}
