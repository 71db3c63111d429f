package io.loopstate.engine.numerics;

import io.loopstate.engine.error.DeadlineException;
import java.util.function.Supplier;

/**
 * Ends calculations whose time is up. A calculation is given its time by {@link #within}; what is repeated inside of it,
 * flashes and points of a phase boundary, calls {@link #check}. Without a deadline nothing is checked.
 *
 * <p>The clock is looked at in every sixteenth check, since a look costs as much as a percent of a saturation; no flash takes
 * more than a few milliseconds. A work area: an object belongs to one thread.
 */
public final class Deadline {
    private static final ThreadLocal<Deadline> CURRENT = new ThreadLocal<>();
    private static final int STRIDE_MASK = 15;

    private final long end;
    private int checks;

    private Deadline(long end) {
        this.end = end;
    }

    /**
     * The result of a calculation, if it is there in time.
     *
     * @param end as {@link System#nanoTime} counts
     * @throws DeadlineException if not; also where the time was up before it began
     */
    public static <T> T within(long end, Supplier<T> calculation) {
        Deadline outer = CURRENT.get();
        Deadline own = new Deadline(end);
        own.look();
        CURRENT.set(own);
        try {
            return calculation.get();
        } finally {
            if (outer == null) {
                CURRENT.remove();
            } else {
                CURRENT.set(outer);
            }
        }
    }

    /**
     * Goes on if there is time left, or no deadline.
     *
     * @throws DeadlineException if not
     */
    public static void check() {
        Deadline current = CURRENT.get();
        if (current != null && (++current.checks & STRIDE_MASK) == 0) {
            current.look();
        }
    }

    private void look() {
        if (System.nanoTime() - end > 0) {
            throw new DeadlineException();
        }
    }
}
