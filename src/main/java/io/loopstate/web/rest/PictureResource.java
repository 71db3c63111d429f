package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.chart.Svg;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Picture;
import io.loopstate.web.mapping.Pictures;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;

/**
 * Draws calculations. No client comes here by itself: {@link FormFilters} sends those here that ask a calculation for a picture, so
 * that the calculations need not know of pictures.
 */
@Path(PictureResource.PATH)
@Produces(Svg.MEDIA_TYPE)
@Blocking
public class PictureResource {
    /** Where pictures are drawn. */
    static final String PATH = "/v1/pictures";

    /** Set on a request that was sent here. */
    static final String SENT = "loopstate.picture";

    private static final String NAME = "operation";

    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public PictureResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** The picture of a query. */
    @GET
    @Path("/{" + NAME + ": .+}")
    @Operation(hidden = true)
    public String draw(
            @PathParam(NAME) String operation, @Context UriInfo uri, @Context ContainerRequestContext request) {
        return exchange.draw(picture(operation, request), uri.getQueryParameters());
    }

    /** The picture of a body. */
    @POST
    @Path("/{" + NAME + ": .+}")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(hidden = true)
    public String draw(
            @PathParam(NAME) String operation,
            JsonNode body,
            @Context UriInfo uri,
            @Context ContainerRequestContext request) {
        return exchange.draw(picture(operation, request), body, uri.getQueryParameters());
    }

    private static Picture<?, ?, ?> picture(String operation, ContainerRequestContext request) {
        return Pictures.named(operation)
                .filter(picture -> request.getProperty(SENT) != null)
                .orElseThrow(NotFoundException::new);
    }
}
