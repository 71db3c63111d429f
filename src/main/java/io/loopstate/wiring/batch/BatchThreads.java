package io.loopstate.wiring.batch;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.batch.ArrayBatch;
import io.loopstate.web.batch.Sweep;
import io.loopstate.web.mapping.Exchange;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/** The threads that answer rows, apart from those of single requests. */
@Singleton
public class BatchThreads implements Executor {
    private final int count;
    private final ExecutorService threads;

    /** Called by the container. */
    @Inject
    public BatchThreads(BatchSettings settings) {
        count = settings.threads().orElse(Runtime.getRuntime().availableProcessors());
        AtomicInteger number = new AtomicInteger();
        threads = Executors.newFixedThreadPool(count, task -> {
            Thread thread = new Thread(task, "batch-" + number.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
    }

    @Produces
    @Singleton
    static ArrayBatch arrays(BatchThreads threads, BatchSettings settings) {
        return new ArrayBatch(threads, settings.window(), settings.arrayRows());
    }

    @Produces
    @Singleton
    static Sweep sweeps(ObjectMapper mapper, Exchange exchange, BatchThreads threads, BatchSettings settings) {
        return new Sweep(
                mapper,
                exchange,
                threads,
                new Sweep.Bounds(settings.window(), settings.sweepPoints(), settings.sweepValues()));
    }

    /** How many there are. */
    public int count() {
        return count;
    }

    @Override
    public void execute(Runnable task) {
        threads.execute(task);
    }

    @PreDestroy
    void stop() {
        threads.shutdownNow();
    }
}
