package io.loopstate.wiring.guard;

import io.quarkus.arc.Arc;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;

/** When the request that a thread is answering has to be done; waiting for a thread counts. */
@ApplicationScoped
public class Deadlines {
    private static final String KEY = "loopstate.deadline";

    private final long single;
    private final long batch;

    /** Called by the container. */
    @Inject
    public Deadlines(Limits limits) {
        single = limits.deadline().toNanos();
        batch = limits.batchDeadline().toNanos();
    }

    void filter(@Observes Filters filters) {
        filters.register(this::note, Order.ADMISSION - 1);
    }

    private void note(RoutingContext context) {
        String path = context.request().path();
        if (Routes.calculation(path)) {
            context.put(KEY, System.nanoTime() + (Routes.batch(path) ? batch : single));
        }
        context.next();
    }

    /** As {@link System#nanoTime} counts. Outside of a request it counts from now. */
    public long current() {
        if (!Arc.container().requestContext().isActive()) {
            // A row among many, on a thread of its own.
            return System.nanoTime() + single;
        }
        ResteasyReactiveRequestContext request = (ResteasyReactiveRequestContext) CurrentRequestManager.get();
        Long end = request == null ? null : request.unwrap(RoutingContext.class).get(KEY);
        return end == null ? System.nanoTime() + single : end;
    }
}
