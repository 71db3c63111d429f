package io.loopstate.wiring.guard;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/**
 * Headers of every reply: what a browser may do with it, and that any page may ask. The service knows no cookies, so a page
 * gets nothing that it could not get by itself; and since the header is the same for all, caches need not tell them apart.
 */
@ApplicationScoped
public class ReplyHeaders {
    private static final CharSequence NO_SNIFF_NAME = HttpHeaders.createOptimized("X-Content-Type-Options");
    private static final CharSequence NO_SNIFF = HttpHeaders.createOptimized("nosniff");
    private static final CharSequence REFERRER_NAME = HttpHeaders.createOptimized("Referrer-Policy");
    private static final CharSequence REFERRER = HttpHeaders.createOptimized("no-referrer");
    private static final CharSequence CONTENT_NAME = HttpHeaders.createOptimized("Content-Security-Policy");
    private static final CharSequence CONTENT =
            HttpHeaders.createOptimized("default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'");
    private static final CharSequence CONTENT_OF_PAGES = HttpHeaders.createOptimized("default-src 'self'; "
            + "script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
            + "frame-ancestors 'none'");
    private static final CharSequence CONTENT_OF_FRONT =
            HttpHeaders.createOptimized("default-src 'none'; script-src 'self'; "
                    + "style-src 'self'; img-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; "
                    + "frame-ancestors 'none'");
    private static final CharSequence ANY = HttpHeaders.createOptimized("*");
    private static final CharSequence EXPOSED =
            HttpHeaders.createOptimized("ETag, Link, RateLimit, RateLimit-Policy, Retry-After, X-Request-Id");
    private static final CharSequence METHODS = HttpHeaders.createOptimized("GET, HEAD, POST, OPTIONS");
    private static final CharSequence SENT = HttpHeaders.createOptimized(
            "Accept, Authorization, Content-Type, If-None-Match, X-API-Key, X-Request-Id, traceparent");
    private static final CharSequence DAY = HttpHeaders.createOptimized("86400");
    private static final String PAGES = "/q/swagger-ui";

    void filter(@Observes Filters filters) {
        filters.register(this::add, Order.HEADERS);
    }

    private static CharSequence content(String path) {
        if (path.equals(Routes.FRONT)) {
            return CONTENT_OF_FRONT;
        }
        return path.startsWith(PAGES) ? CONTENT_OF_PAGES : CONTENT;
    }

    private void add(RoutingContext context) {
        MultiMap headers = context.response().headers();
        headers.set(NO_SNIFF_NAME, NO_SNIFF);
        headers.set(REFERRER_NAME, REFERRER);
        headers.set(CONTENT_NAME, content(context.request().path()));
        headers.set(HttpHeaders.ACCESS_CONTROL_ALLOW_ORIGIN, ANY);
        headers.set(HttpHeaders.ACCESS_CONTROL_EXPOSE_HEADERS, EXPOSED);
        if (context.request().method().equals(HttpMethod.OPTIONS)
                && context.request().headers().contains(HttpHeaders.ACCESS_CONTROL_REQUEST_METHOD)) {
            headers.set(HttpHeaders.ACCESS_CONTROL_ALLOW_METHODS, METHODS);
            headers.set(HttpHeaders.ACCESS_CONTROL_ALLOW_HEADERS, SENT);
            headers.set(HttpHeaders.ACCESS_CONTROL_MAX_AGE, DAY);
            context.response().setStatusCode(204).end();
            return;
        }
        context.next();
    }
}
