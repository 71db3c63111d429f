package io.loopstate.web.rest;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** The form of a report by its name beats what the client accepts. */
public final class ReportFilters {
    private static final Set<String> REPORTS = Set.of("/v1/verify", "/v1/verification");

    /** Before the route is chosen, which goes by the header. */
    @ServerRequestFilter(preMatching = true)
    public void choose(ContainerRequestContext request) {
        if (REPORTS.contains(FormFilters.path(request))) {
            String format = request.getUriInfo().getQueryParameters().getFirst("format");
            ReportForm.named(format)
                    .ifPresent(form -> request.getHeaders()
                            .putSingle(HttpHeaders.ACCEPT, form.mediaType().toString()));
        }
    }
}
