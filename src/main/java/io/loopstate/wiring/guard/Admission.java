package io.loopstate.wiring.guard;

import io.loopstate.web.problem.Problem;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.Vertx;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Takes on as many requests as can be answered in time and refuses the others at once, since an answer that comes too late
 * costs as much as one that does not. Two things are watched: requests under way, which wait for worker threads, and how far
 * the event loop is behind, on which the others wait.
 */
@ApplicationScoped
public class Admission {
    private final Limits limits;
    private final Replies replies;
    private final LoopLag lag;
    private final AtomicInteger requests = new AtomicInteger();
    private final AtomicInteger batches = new AtomicInteger();
    private final Problem busy;
    private final Problem late;

    /** Called by the container. */
    @Inject
    public Admission(Limits limits, Vertx vertx, Replies replies) {
        this.limits = limits;
        this.replies = replies;
        this.lag = new LoopLag(vertx, limits.waiting());
        busy = Replies.overloaded("As many requests are under way as the service takes on.");
        late = Replies.overloaded("Requests have been waiting longer than the service lets them wait.");
    }

    /** Requests under way, without those with many rows. */
    public int requests() {
        return requests.get();
    }

    /** Requests with many rows under way, without streams. */
    public int batches() {
        return batches.get();
    }

    void filter(@Observes Filters filters) {
        filters.register(this::admit, Order.ADMISSION);
    }

    private void admit(RoutingContext context) {
        String path = context.request().path();
        if (!Routes.calculation(path)) {
            context.next();
            return;
        }
        if (lag.tooFar()) {
            replies.send(context, late);
            return;
        }
        boolean batch = Routes.batch(path);
        AtomicInteger count = batch ? batches : requests;
        int most = batch ? limits.concurrentBatches() : limits.concurrentRequests();
        if (count.incrementAndGet() > most) {
            count.decrementAndGet();
            replies.send(context, busy);
            return;
        }
        context.addEndHandler(done -> count.decrementAndGet());
        context.next();
    }
}
