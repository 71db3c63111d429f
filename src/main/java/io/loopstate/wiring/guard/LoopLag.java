package io.loopstate.wiring.guard;

import io.vertx.core.Vertx;
import java.time.Duration;

/**
 * How far the event loop of the calling thread is behind: a tick comes late by as much as whatever has arrived since has to
 * wait. An event loop that asks for the first time starts to tick.
 */
final class LoopLag {
    private static final long TICK_MILLISECONDS = 100;
    private static final long TICK = TICK_MILLISECONDS * 1_000_000;

    /** When the last tick came. One thread alone uses it. */
    private static final class Ticks {
        private long last = System.nanoTime();
    }

    private final ThreadLocal<Ticks> ticks;
    private final long limit;

    LoopLag(Vertx vertx, Duration limit) {
        this.limit = limit.toNanos();
        this.ticks = ThreadLocal.withInitial(() -> {
            Ticks own = new Ticks();
            vertx.setPeriodic(TICK_MILLISECONDS, id -> own.last = System.nanoTime());
            return own;
        });
    }

    boolean tooFar() {
        return System.nanoTime() - ticks.get().last - TICK > limit;
    }
}
