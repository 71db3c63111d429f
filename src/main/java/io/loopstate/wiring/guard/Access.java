package io.loopstate.wiring.guard;

import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemKind;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.quarkus.vertx.http.runtime.security.QuarkusHttpUser;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;

/**
 * Who asks, by a key or by a bearer token that the platform has checked, and whether once more is allowed. Refuses before the body is
 * read. Bad data never ends here: a spreadsheet asks its user for a password when it gets a 401.
 */
@ApplicationScoped
public class Access {
    /** The header that carries a key. */
    public static final String HEADER = "X-API-Key";

    private static final String PLATFORM = "/q/";
    private static final String CACHE_CONTROL = "Cache-Control";

    private final KeyRing keys;
    private final Subjects subjects;
    private final boolean bearer;
    private final boolean anonymous;
    private final Replies replies;

    /** Called by the container. */
    @Inject
    public Access(AccessSettings settings, Replies replies, Instance<HttpAuthenticationMechanism> mechanisms) {
        this.replies = replies;
        bearer = settings.bearer();
        if (bearer && mechanisms.isUnsatisfied()) {
            throw new IllegalStateException(
                    "loopstate.access.bearer needs a package that checks tokens: mvn -B -Poidc package");
        }
        subjects = new Subjects(settings.requestsPerMinute());
        keys = new KeyRing(settings);
        anonymous = settings.anonymous().orElse(keys.isEmpty() && !bearer);
    }

    /** Whether nobody is answered without a key. */
    public boolean keyed() {
        return !anonymous;
    }

    void filter(@Observes Filters filters) {
        if (!keys.isEmpty() || bearer || !anonymous) {
            filters.register(this::check, Order.ACCESS);
        }
    }

    private void check(RoutingContext context) {
        if (context.request().path().startsWith(PLATFORM)
                || Routes.emptyForm(context.request())
                || context.request().method().equals(HttpMethod.OPTIONS)) {
            context.next();
            return;
        }
        String given = KeyParameter.key(context);
        Optional<Rate> rate = given == null ? Optional.empty() : keys.find(given);
        if (rate.isPresent()) {
            spend(context, "key", rate.get());
        } else if (given == null && bearer && authenticated(context)) {
            String subject = ((QuarkusHttpUser) context.user())
                    .getSecurityIdentity()
                    .getPrincipal()
                    .getName();
            spend(context, "subject", subjects.rate(subject));
        } else if (given == null && anonymous) {
            context.next();
        } else {
            refuse(context, given == null);
        }
    }

    private static boolean authenticated(RoutingContext context) {
        return context.user() instanceof QuarkusHttpUser user
                && !user.getSecurityIdentity().isAnonymous();
    }

    private void spend(RoutingContext context, String by, Rate rate) {
        Rate.Turn turn = rate.take();
        HttpServerResponse response = context.response();
        response.putHeader("RateLimit-Policy", '"' + by + "\";q=" + rate.requestsPerMinute() + ";w=60");
        response.putHeader("RateLimit", '"' + by + "\";r=" + turn.left() + ";t=" + turn.secondsToFull());
        if (turn.allowed()) {
            context.addHeadersEndHandler(done -> keepPrivate(response));
            context.next();
            return;
        }
        response.putHeader("Retry-After", Long.toString(turn.secondsToNext()));
        Fault fault = Fault.request("too-many-requests", "This " + by + " has used up its requests for now.")
                .withAllowed(rate.requestsPerMinute() + " requests a minute")
                .withHint("Try again in " + turn.secondsToNext() + " s, or send many rows in one request.");
        replies.send(context, Problem.of(ProblemKind.TOO_MANY_REQUESTS, List.of(fault)));
    }

    /** A cache between may not give a reply to those who have no key. */
    private static void keepPrivate(HttpServerResponse response) {
        String cache = response.headers().get(CACHE_CONTROL);
        if (cache != null && cache.contains("public")) {
            response.putHeader(CACHE_CONTROL, cache.replace("public", "private"));
        }
    }

    /** Refuses a token that the platform did not accept, and says nothing of it. */
    public void refuseToken(RoutingContext context) {
        context.response().putHeader("WWW-Authenticate", "Bearer error=\"invalid_token\", ApiKey realm=\"loopstate\"");
        Fault fault = Fault.parameter("Authorization", "unknown-token", "This token is not accepted here.")
                .withAllowed("a token of the issuer that this service trusts, not expired");
        replies.send(context, Problem.of(ProblemKind.UNAUTHORIZED, List.of(fault)));
    }

    /** Says nothing of the key that was sent. */
    private void refuse(RoutingContext context, boolean missing) {
        context.response().putHeader("WWW-Authenticate", (bearer ? "Bearer, " : "") + "ApiKey realm=\"loopstate\"");
        Fault fault = Fault.parameter(
                        HEADER,
                        missing ? "missing-key" : "unknown-key",
                        missing ? "This service answers with a key only." : "This key is not known here.")
                .withAllowed("a key in the header " + HEADER + " or in the query parameter " + KeyParameter.NAME
                        + (bearer ? ", or a bearer token in the header Authorization" : ""));
        replies.send(context, Problem.of(ProblemKind.UNAUTHORIZED, List.of(fault)));
    }
}
