package io.loopstate.web.rest;

import io.loopstate.web.problem.Routes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;

/** What happens to a request before a resource is chosen. */
public final class RequestFilters {

    /** OPTIONS names the methods of exactly this path; the platform would answer for a path without a route as well. */
    @ServerRequestFilter(preMatching = true)
    public Optional<Response> options(ContainerRequestContext request) {
        if (!request.getMethod().equals(HttpMethod.OPTIONS)) {
            return Optional.empty();
        }
        Set<String> methods = Routes.methods((ResteasyReactiveRequestContext) CurrentRequestManager.get());
        if (methods.isEmpty()) {
            throw new NotFoundException();
        }
        return Optional.of(Response.noContent().allow(methods).build());
    }

    /**
     * A body without a format, or sent as plain text, is read as JSON: scripts inside spreadsheets can send nothing but
     * plain text without asking the server for permission first.
     */
    @ServerRequestFilter(preMatching = true)
    public void plainTextIsJson(ContainerRequestContext request) {
        if (!request.getMethod().equals(HttpMethod.POST)) {
            return;
        }
        MediaType type = request.getMediaType();
        if (type == null || type.isCompatible(MediaType.TEXT_PLAIN_TYPE) && !type.isWildcardType()) {
            request.getHeaders().putSingle(HttpHeaders.CONTENT_TYPE, MediaType.APPLICATION_JSON);
        }
    }
}
