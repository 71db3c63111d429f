package io.loopstate.web.batch;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;

/**
 * A bounded window of rows that several threads answer and one thread, the owner, puts in and takes out in order. Rows put in
 * and not yet taken out are never more than the window; answers that wait to be taken out may exceed their limit in bytes by one
 * answer for each thread.
 *
 * @param <T> a row
 */
public final class OrderedWork<T> {
    /** A thread that has worked so long lets the other streams have a turn. */
    private static final long TURN_NANOSECONDS = 5_000_000;

    private final Executor threads;
    private final int mostThreads;
    private final long mostBytes;
    private final int window;
    private final Function<T, Answered> answer;
    private final Runnable ready;

    private final AtomicReferenceArray<T> rows;
    private final AtomicReferenceArray<Answered> answers;
    private final AtomicLong begun = new AtomicLong();
    private final AtomicLong waitingBytes = new AtomicLong();
    private final AtomicInteger working = new AtomicInteger();
    private final AtomicBoolean told = new AtomicBoolean();
    private volatile long offered;
    private volatile boolean cancelled;
    private long taken;

    /**
     * @param threads answer the rows
     * @param mostThreads of them at a time
     * @param window most rows under way
     * @param mostBytes of answers that wait; no further row is begun beyond
     * @param answer answers a row; called by many threads, never throws
     * @param ready called by any thread when there may be something to take out, once until the owner comes to {@link #take}
     */
    public OrderedWork(
            Executor threads,
            int mostThreads,
            int window,
            long mostBytes,
            Function<T, Answered> answer,
            Runnable ready) {
        this.threads = threads;
        this.mostThreads = mostThreads;
        this.window = window;
        this.mostBytes = mostBytes;
        this.answer = answer;
        this.ready = ready;
        rows = new AtomicReferenceArray<>(window);
        answers = new AtomicReferenceArray<>(window);
    }

    /** Whether there is room for one more row; for the owner. */
    public boolean hasRoom() {
        return offered - taken < window;
    }

    /** Puts a row in, where there is room; for the owner. */
    @SuppressWarnings("NonAtomicOperationOnVolatileField") // the owner alone writes it
    public void offer(T row) {
        rows.set(slot(offered), row);
        offered = offered + 1;
        moreThreads();
    }

    /** The answer to the next row in order, if it is ready; for the owner. */
    public Optional<Answered> take() {
        told.set(false);
        Answered next = taken < offered ? answers.getAndSet(slot(taken), null) : null;
        if (next == null) {
            return Optional.empty();
        }
        taken++;
        long before = waitingBytes.getAndAdd(-next.bytes().length);
        if (before >= mostBytes) {
            moreThreads();
        }
        return Optional.of(next);
    }

    /** Whether everything that was put in has been taken out; for the owner. */
    public boolean isEmpty() {
        return taken == offered;
    }

    /** Rows that no thread has begun are not begun any more. */
    public void cancel() {
        cancelled = true;
    }

    private int slot(long row) {
        return (int) (row % window);
    }

    private boolean more() {
        return !cancelled && begun.get() < offered && waitingBytes.get() < mostBytes;
    }

    private void moreThreads() {
        while (more()) {
            int now = working.get();
            if (now >= mostThreads) {
                return;
            }
            if (working.compareAndSet(now, now + 1)) {
                threads.execute(this::work);
                return;
            }
        }
    }

    private void work() {
        long end = System.nanoTime() + TURN_NANOSECONDS;
        do {
            if (!workOnce()) {
                working.decrementAndGet();
                // A row may have come in between.
                moreThreads();
                return;
            }
        } while (System.nanoTime() - end < 0);
        threads.execute(this::work);
    }

    private boolean workOnce() {
        long row = begun.get();
        if (!more() || row >= offered) {
            return false;
        }
        if (begun.compareAndSet(row, row + 1)) {
            Answered done = answer.apply(rows.getAndSet(slot(row), null));
            waitingBytes.addAndGet(done.bytes().length);
            answers.set(slot(row), done);
            if (told.compareAndSet(false, true)) {
                ready.run();
            }
        }
        return true;
    }
}
