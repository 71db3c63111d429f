package io.loopstate.wiring;

import io.loopstate.web.problem.Occurrence;
import io.loopstate.web.problem.PercentEncoding;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemMappers;
import io.loopstate.wiring.batch.BatchStreams;
import io.loopstate.wiring.guard.Access;
import io.loopstate.wiring.guard.Bodies;
import io.loopstate.wiring.guard.Order;
import io.loopstate.wiring.guard.Replies;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpClosedException;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jboss.logging.Logger;

/**
 * What is decided before a request reaches the resources: escapes of the URL, the length of the body, second names of
 * the operational routes. Refusals have the same form as the resources'.
 */
@ApplicationScoped
public class HttpGuard {
    private static final Logger LOG = Logger.getLogger(HttpGuard.class);

    private static final int PRIORITY = Order.ADDRESS;

    private static final String OPERATIONAL_METHODS = "GET, HEAD, OPTIONS";
    private static final String OPERATIONAL = "/q/";
    private static final Map<String, String> SECOND_NAMES = Map.of(
            "/livez", "/q/health/live",
            "/readyz", "/q/health/ready",
            "/startedz", "/q/health/started",
            "/metrics", "/q/metrics",
            "/version", "/v1/version");
    private static final Set<String> READ_METHODS = Set.of("GET", "HEAD");

    private final Replies replies;
    private final Bodies bodies;
    private final Access access;

    /** Called by the container. */
    @Inject
    public HttpGuard(Replies replies, Bodies bodies, Access access) {
        this.replies = replies;
        this.access = access;
        this.bodies = bodies;
    }

    void filter(@Observes Filters filters) {
        filters.register(this::handle, PRIORITY);
    }

    void failures(@Observes Router router) {
        router.route().order(-PRIORITY).failureHandler(this::fail);
    }

    private void handle(RoutingContext context) {
        String uri = context.request().uri();
        Optional<Problem> refusal = PercentEncoding.check(uri).or(() -> tooLarge(context));
        if (refusal.isPresent()) {
            replies.send(context, refusal.get());
            return;
        }
        String escaped = PercentEncoding.escapeRaw(uri);
        if (!escaped.equals(uri)) {
            context.reroute(escaped);
            return;
        }
        String path = withoutTrailingSlash(context.request().path());
        String target = SECOND_NAMES.getOrDefault(path, path);
        if (target.startsWith(OPERATIONAL) && !operational(context)) {
            return;
        }
        boolean slashMatters = path.startsWith("/q/swagger-ui") || !target.startsWith(OPERATIONAL);
        if (!target.equals(path)
                || !slashMatters && !target.equals(context.request().path())) {
            String query = context.request().query();
            context.reroute(query == null ? target : target + '?' + query);
            return;
        }
        context.next();
    }

    /** Answers methods that the operational routes do not serve; they would be 404 or empty otherwise. */
    private boolean operational(RoutingContext context) {
        HttpMethod method = context.request().method();
        if (READ_METHODS.contains(method.name())) {
            return true;
        }
        HttpServerResponse response = context.response().putHeader("Allow", OPERATIONAL_METHODS);
        if (method.equals(HttpMethod.OPTIONS)) {
            response.setStatusCode(204).end();
        } else {
            replies.send(context, ProblemMappers.methodNotAllowed(method.name(), OPERATIONAL_METHODS));
        }
        return false;
    }

    private Optional<Problem> tooLarge(RoutingContext context) {
        if (BatchStreams.isStream(context.request())) {
            return Optional.empty();
        }
        String length = context.request().getHeader("Content-Length");
        long limit = bodies.limit(context.request().path());
        try {
            return length == null || Long.parseLong(length) <= limit
                    ? Optional.empty()
                    : Optional.of(ProblemMappers.bodyTooLarge(limit, length));
        } catch (NumberFormatException e) {
            return Optional.of(ProblemMappers.platform(400));
        }
    }

    private void fail(RoutingContext context) {
        if (context.response().ended() || context.failure() instanceof HttpClosedException) {
            LOG.debug("failure that no client waits for", context.failure());
            return;
        }
        if (context.failure() instanceof AuthenticationFailedException) {
            access.refuseToken(context);
            return;
        }
        int status = context.statusCode();
        if (context.failure() != null && (status < 400 || status >= 500)) {
            LOG.errorf(
                    context.failure(),
                    "defect method=%s path=%s requestId=%s",
                    context.request().method(),
                    context.request().path(),
                    Occurrence.id(context));
            replies.send(context, ProblemMappers.internalError());
        } else {
            replies.send(
                    context,
                    switch (status) {
                        case 404 -> ProblemMappers.notFound(context.request().path());
                        case 413 ->
                            ProblemMappers.bodyTooLarge(
                                    bodies.limit(context.request().path()), null);
                        default -> ProblemMappers.platform(status);
                    });
        }
    }

    private static String withoutTrailingSlash(String path) {
        return path.length() > 1 && path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
    }
}
