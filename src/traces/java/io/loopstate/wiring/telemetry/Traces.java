package io.loopstate.wiring.telemetry;

import io.loopstate.web.problem.Occurrence;
import io.loopstate.wiring.guard.Order;
import io.opentelemetry.api.OpenTelemetry;
import io.opentelemetry.api.trace.Span;
import io.opentelemetry.api.trace.SpanKind;
import io.opentelemetry.api.trace.StatusCode;
import io.opentelemetry.api.trace.Tracer;
import io.opentelemetry.context.Context;
import io.opentelemetry.context.propagation.TextMapGetter;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** One span for each request, as a part of the trace that its {@code traceparent} names. Nothing of the request is in it. */
@ApplicationScoped
public class Traces {
    private static final String SPAN = "loopstate.span";

    private static final TextMapGetter<HttpServerRequest> HEADERS = new TextMapGetter<>() {
        @Override
        public Iterable<String> keys(HttpServerRequest request) {
            return request.headers().names();
        }

        @Override
        public String get(HttpServerRequest request, String name) {
            return request == null ? null : request.getHeader(name);
        }
    };

    private final OpenTelemetry telemetry;
    private final Tracer tracer;
    private final boolean off;

    /** Called by the container. */
    @Inject
    public Traces(OpenTelemetry telemetry, @ConfigProperty(name = "quarkus.otel.sdk.disabled") boolean off) {
        this.telemetry = telemetry;
        this.tracer = telemetry.getTracer("io.loopstate");
        this.off = off;
    }

    void filter(@Observes Filters filters) {
        if (!off) {
            filters.register(this::begin, Order.TELEMETRY - 1);
        }
    }

    private void begin(RoutingContext context) {
        // A request that was sent to another route passes here again.
        if (context.get(SPAN) == null) {
            Context parent = telemetry.getPropagators().getTextMapPropagator().extract(Context.root(), context.request(), HEADERS);
            Span span = tracer.spanBuilder("request")
                    .setSpanKind(SpanKind.SERVER)
                    .setParent(parent)
                    .startSpan();
            context.put(SPAN, span);
            context.addEndHandler(done -> end(context, span));
        }
        context.next();
    }

    private static void end(RoutingContext context, Span span) {
        int status = context.response().getStatusCode();
        span.updateName(OperationLabel.of(context.request().path()))
                .setAttribute("http.response.status_code", status)
                .setAttribute("loopstate.request.id", Occurrence.id(context));
        Occurrence.problem(context).ifPresent(problem -> span.setAttribute("loopstate.problem", problem));
        if (status >= 500) {
            span.setStatus(StatusCode.ERROR);
        }
        span.end();
    }
}
