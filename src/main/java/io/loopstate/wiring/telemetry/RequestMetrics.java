package io.loopstate.wiring.telemetry;

import io.loopstate.web.problem.ProblemKind;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.DoubleStream;

/** Times of requests by operation and class of status, and refusals by their problem. */
@Singleton
public class RequestMetrics {
    /** Upper ends of the buckets, ms. */
    private static final double[] BUCKETS = {1, 2.5, 5, 10, 25, 50, 100, 250, 500, 1000, 2500, 10_000};

    private static final String[] CLASSES = {"gone", "1xx", "2xx", "3xx", "4xx", "5xx"};

    private final MeterRegistry registry;
    private final Map<String, Timer[]> times = new ConcurrentHashMap<>();
    private final Map<String, Counter> problems = new ConcurrentHashMap<>();

    /** Called by the container. */
    @Inject
    public RequestMetrics(MeterRegistry registry) {
        this.registry = registry;
        // From the start, so that the first refusal is an increase.
        for (ProblemKind kind : ProblemKind.values()) {
            problem(kind.code());
        }
    }

    /**
     * Counts a request that has ended.
     *
     * @param status of the reply; 0 where the client did not wait for it
     */
    void ended(String operation, int status, long nanoseconds) {
        Timer[] timers = times.computeIfAbsent(operation, name -> new Timer[CLASSES.length]);
        int index = Math.min(status / 100, CLASSES.length - 1);
        if (timers[index] == null) {
            // Two at once get the same one from the registry.
            timers[index] = timer(operation, CLASSES[index]);
        }
        timers[index].record(nanoseconds, TimeUnit.NANOSECONDS);
    }

    private Timer timer(String operation, String status) {
        return Timer.builder("loopstate.requests")
                .description("Requests by what they asked for and the class of their status, and the time they took.")
                .tags("operation", operation, "status", status)
                .serviceLevelObjectives(DoubleStream.of(BUCKETS)
                        .mapToObj(ms -> Duration.ofNanos((long) (ms * 1e6)))
                        .toArray(Duration[]::new))
                .register(registry);
    }

    /** Counts a refusal. */
    void refused(String problem) {
        problem(problem).increment();
    }

    private Counter problem(String problem) {
        return problems.computeIfAbsent(
                problem,
                code -> Counter.builder("loopstate.refusals")
                        .description(
                                "Refusals by the code of their problem; overloaded, too-many-requests, body-too-large, "
                                        + "body-too-slow and deadline-exceeded are limits.")
                        .tag("problem", code)
                        .register(registry));
    }
}
