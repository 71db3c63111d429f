package io.loopstate.web.rest;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.jaxrs.UriInfoImpl;

/**
 * The platform's view of an address, with the query decoded once: filters and resources all ask for it, and the platform
 * copies it for each name and wraps it for each who asks. Names differ by case, as everywhere else.
 */
final class DecodedQuery extends UriInfoImpl {
    private final MultivaluedMap<String, String> parameters = new MultivaluedHashMap<>();

    private DecodedQuery(ResteasyReactiveRequestContext request) {
        super(request);
        request.unwrap(RoutingContext.class).queryParams().forEach(parameters::add);
    }

    /** Lets everyone behind see the query of a request this way. */
    static MultivaluedMap<String, String> install(ResteasyReactiveRequestContext request) {
        DecodedQuery view = new DecodedQuery(request);
        request.setUriInfo(view);
        return view.getQueryParameters();
    }

    @Override
    public MultivaluedMap<String, String> getQueryParameters() {
        return parameters;
    }
}
