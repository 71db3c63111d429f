package io.loopstate.wiring;

import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.List;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.jboss.logging.Logger;

/**
 * The engine is ready when it gives a few published values: the check runs once, before the port opens, and a service that
 * fails it never becomes ready and says why.
 */
@Readiness
@ApplicationScoped
public class EngineCheck implements HealthCheck {
    private static final Logger LOG = Logger.getLogger(EngineCheck.class);
    private static final long NANOSECONDS_PER_MILLISECOND = 1_000_000;

    private final List<SelfCheck.Value> values;
    private List<String> failures;
    private long milliseconds;

    /** Called by the container. */
    @Inject
    public EngineCheck(Catalog catalog, Equilibria equilibria) {
        this(new SelfCheck(catalog, equilibria).values());
    }

    EngineCheck(List<SelfCheck.Value> values) {
        this.values = List.copyOf(values);
    }

    @PostConstruct
    void run() {
        long begin = System.nanoTime();
        failures = SelfCheck.failures(values);
        milliseconds = (System.nanoTime() - begin) / NANOSECONDS_PER_MILLISECOND;
        failures.forEach(failure -> LOG.errorf("self-check failed: %s", failure));
    }

    /** How long it took, for the line of the start; making it runs the check. */
    @Produces
    @Singleton
    StartupFact duration() {
        return new StartupFact("selfCheckMilliseconds", Long.toString(milliseconds));
    }

    @Override
    public HealthCheckResponse call() {
        return HealthCheckResponse.named("published values")
                .status(failures.isEmpty())
                .withData("values", values.size())
                .withData("failures", String.join("; ", failures))
                .build();
    }
}
