package io.loopstate.wiring.guard;

import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemKind;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.handler.BodyHandler;
import io.vertx.ext.web.impl.RoutingContextInternal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Set;

/**
 * Reads bodies as a whole on the event loop, up to a length and within a time, so that a client that sends slowly holds
 * neither a worker thread nor a place among the requests under way.
 */
@ApplicationScoped
public class Bodies {
    private static final Set<HttpMethod> WITHOUT_BODY = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);

    private static final String TIMER = "loopstate.body-timer";

    private final Limits limits;
    private final Vertx vertx;
    private final Replies replies;
    private final BodyHandler single;
    private final BodyHandler batch;

    /** Called by the container. */
    @Inject
    public Bodies(Limits limits, Vertx vertx, Replies replies) {
        this.limits = limits;
        this.vertx = vertx;
        this.replies = replies;
        single = BodyHandler.create(false).setBodyLimit(limits.bodySize().asLongValue());
        batch = BodyHandler.create(false).setBodyLimit(limits.batchBodySize().asLongValue());
    }

    void filter(@Observes Filters filters) {
        filters.register(this::read, Order.BODY);
        filters.register(this::complete, Order.BODY - 1);
    }

    /** Longest body that a path takes, in bytes. */
    public long limit(String path) {
        return (Routes.batch(path) ? limits.batchBodySize() : limits.bodySize()).asLongValue();
    }

    private void read(RoutingContext context) {
        if (WITHOUT_BODY.contains(context.request().method())) {
            context.next();
            return;
        }
        if (!context.request().isEnded()) {
            long timer = vertx.setTimer(limits.bodyTimeout().toMillis(), id -> late(context));
            context.put(TIMER, timer);
            context.addEndHandler(done -> vertx.cancelTimer(timer));
        }
        (Routes.batch(context.request().path()) ? batch : single).handle(context);
    }

    /** A body without a byte is one as well, for those who look for it. */
    private void complete(RoutingContext context) {
        // The time of the body is over once it is here; a paused request does not say so.
        if (context.get(TIMER) instanceof Long timer) {
            vertx.cancelTimer(timer);
        }
        if (!WITHOUT_BODY.contains(context.request().method()) && context.body().buffer() == null) {
            ((RoutingContextInternal) context).setBody(Buffer.buffer());
        }
        context.next();
    }

    private void late(RoutingContext context) {
        if (!context.request().isEnded() && !context.response().ended()) {
            String allowed = "at most " + limits.bodyTimeout().toSeconds() + " s";
            Fault fault = Fault.request("body-too-slow", "The body did not arrive in time.")
                    .withAllowed(allowed);
            replies.send(context, Problem.of(ProblemKind.BODY_TOO_SLOW, List.of(fault)));
        }
    }
}
