package io.loopstate.wiring.telemetry;

import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.numerics.Iteration;
import io.loopstate.wiring.guard.Admission;
import io.loopstate.wiring.guard.Limits;
import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** The engine's iterations, the lines of refrigerants that are kept, and the requests under way. */
@Singleton
public class EngineMetrics implements MeterBinder {
    private final Equilibria equilibria;
    private final Admission admission;
    private final Limits limits;

    /** Called by the container. */
    @Inject
    public EngineMetrics(Equilibria equilibria, Admission admission, Limits limits) {
        this.equilibria = equilibria;
        this.admission = admission;
        this.limits = limits;
    }

    @Override
    public void bindTo(MeterRegistry registry) {
        for (Iteration iteration : Iteration.values()) {
            count(registry, iteration);
        }
        lines(registry);
        underWay(registry, "single", Admission::requests, limits.concurrentRequests());
        underWay(registry, "batch", Admission::batches, limits.concurrentBatches());
    }

    private static void count(MeterRegistry registry, Iteration iteration) {
        String name = iteration.name().toLowerCase(Locale.ROOT);
        FunctionCounter.builder("loopstate.engine.steps", iteration, Iteration::steps)
                .description("Steps of the engine's iterations.")
                .tag("iteration", name)
                .register(registry);
        outcome(registry, iteration, name, "converged", Iteration::converged);
        outcome(registry, iteration, name, "gave-up", Iteration::givenUp);
    }

    private static void outcome(
            MeterRegistry registry,
            Iteration iteration,
            String name,
            String outcome,
            ToDoubleFunction<Iteration> value) {
        FunctionCounter.builder("loopstate.engine.iterations", iteration, value)
                .description("Iterations of the engine; after one that gave up there may be another way.")
                .tags("iteration", name, "outcome", outcome)
                .register(registry);
    }

    private void lines(MeterRegistry registry) {
        kept(registry, "catalogue", states -> states.kept().catalogued());
        kept(registry, "composition", states -> states.kept().compositions());
        Gauge.builder(
                        "loopstate.lines.limit",
                        equilibria,
                        states -> states.kept().mostCompositions())
                .description("Most compositions of clients whose lines are kept.")
                .register(registry);
        asked(registry, "kept", states -> states.kept().hits());
        asked(registry, "made", states -> states.kept().misses());
    }

    private void kept(MeterRegistry registry, String of, ToDoubleFunction<Equilibria> value) {
        Gauge.builder("loopstate.lines", equilibria, value)
                .description(
                        "Refrigerants of the catalogue, and compositions of clients, whose saturation lines are kept.")
                .tag("of", of)
                .register(registry);
    }

    private void asked(MeterRegistry registry, String result, ToDoubleFunction<Equilibria> value) {
        FunctionCounter.builder("loopstate.lines.requests", equilibria, value)
                .description(
                        "How often the lines of a client's composition were asked for, and were kept or had to be made.")
                .tag("result", result)
                .register(registry);
    }

    private void underWay(MeterRegistry registry, String kind, ToDoubleFunction<Admission> value, int limit) {
        Gauge.builder("loopstate.requests.under.way", admission, value)
                .description("Requests that were taken on and are not answered yet.")
                .tag("kind", kind)
                .register(registry);
        Gauge.builder("loopstate.requests.under.way.limit", () -> limit)
                .description("Beyond which requests are refused.")
                .tag("kind", kind)
                .register(registry);
    }
}
