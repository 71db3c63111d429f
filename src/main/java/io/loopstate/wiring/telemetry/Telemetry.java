package io.loopstate.wiring.telemetry;

import io.loopstate.web.problem.Occurrence;
import io.loopstate.web.problem.ProblemKind;
import io.loopstate.wiring.guard.Order;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jboss.logging.Logger;

/** Gives every request an id and tells, once it has ended, what became of it. */
@ApplicationScoped
public class Telemetry {
    private static final Logger LOG = Logger.getLogger(Telemetry.class);
    private static final String NOT_CONVERGED = ProblemKind.NOT_CONVERGED.code();
    private static final Logger ACCESS = Logger.getLogger("io.loopstate.access");
    private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST", "PUT", "DELETE", "PATCH", "OPTIONS");

    private final RequestMetrics metrics;
    private final boolean accessLog;

    /** Called by the container. */
    @Inject
    public Telemetry(RequestMetrics metrics, TelemetrySettings settings) {
        this.metrics = metrics;
        this.accessLog = settings.accessLog();
    }

    void filter(@Observes Filters filters) {
        filters.register(this::begin, Order.TELEMETRY);
    }

    private void begin(RoutingContext context) {
        // A request that was sent to another route passes here again, without its headers.
        if (Occurrence.id(context) == null) {
            String sent = context.request().getHeader(RequestId.HEADER);
            boolean sane = RequestId.isSane(sent);
            Occurrence.identify(context, sane ? sent : RequestId.random(), sane);
            long began = System.nanoTime();
            context.addEndHandler(done -> ended(context, done.succeeded(), System.nanoTime() - began));
        }
        context.response().putHeader(RequestId.HEADER, Occurrence.id(context));
        context.next();
    }

    private void ended(RoutingContext context, boolean read, long nanoseconds) {
        String operation = OperationLabel.of(context.request().path());
        int status = read ? context.response().getStatusCode() : 0;
        metrics.ended(operation, status, nanoseconds);
        Optional<String> problem = Occurrence.problem(context);
        problem.ifPresent(metrics::refused);
        if (problem.filter(NOT_CONVERGED::equals).isPresent()) {
            LOG.warnf("not converged requestId=%s operation=%s", Occurrence.id(context), operation);
        }
        if (accessLog) {
            String method = context.request().method().name();
            ACCESS.infof(
                    "request requestId=%s method=%s operation=%s status=%d problem=%s milliseconds=%s bytes=%d",
                    Occurrence.id(context),
                    METHODS.contains(method) ? method : "other",
                    operation,
                    status,
                    problem.orElse("none"),
                    String.format(Locale.ROOT, "%.3f", nanoseconds / 1e6),
                    context.response().bytesWritten());
        }
    }
}
