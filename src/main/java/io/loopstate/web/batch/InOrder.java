package io.loopstate.web.batch;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.function.IntFunction;

/** Tasks that other threads do, a bounded number of them under way, and whose results are taken in order. */
final class InOrder {
    private final Executor threads;
    private final int window;

    InOrder(Executor threads, int window) {
        this.threads = threads;
        this.window = window;
    }

    /** Takes a result. */
    interface Sink<R> {
        void take(R result) throws IOException;
    }

    /**
     * Does so many tasks. Where a result cannot be taken, the rest is not begun.
     *
     * @param task by its place; what it throws is thrown here
     */
    <R> void run(int count, IntFunction<R> task, Sink<R> sink) throws IOException {
        Queue<FutureTask<R>> underWay = new ArrayDeque<>();
        try {
            for (int i = 0; i < count; i++) {
                if (underWay.size() == window) {
                    sink.take(result(underWay.remove()));
                }
                int place = i;
                FutureTask<R> next = new FutureTask<>(() -> task.apply(place));
                underWay.add(next);
                threads.execute(next);
            }
            while (!underWay.isEmpty()) {
                sink.take(result(underWay.remove()));
            }
        } finally {
            underWay.forEach(rest -> rest.cancel(false));
        }
    }

    private static <R> R result(FutureTask<R> task) throws IOException {
        try {
            return task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException refusal) {
                throw refusal;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }
}
