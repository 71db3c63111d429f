package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.DesignReply;
import io.loopstate.web.dto.DesignRequest;
import io.loopstate.web.dto.ReadingsReply;
import io.loopstate.web.dto.ReadingsRequest;
import io.loopstate.web.mapping.DesignMapping;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.ReadingsMapping;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The points around a single-stage vapor-compression loop. */
@Path("/v1/cycle-points")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
@Tag(name = "cycle-points")
public class CyclePointsResource {
    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public CyclePointsResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** The cycle of design conditions, from a query. */
    @GET
    @Path("/design")
    @Operation(operationId = "getDesignCycle", summary = "The cycle from design conditions")
    public DesignReply design(@Context UriInfo uri) {
        return exchange.answer(DesignMapping.OPERATION, uri.getQueryParameters());
    }

    /** The cycle of design conditions, from a body. */
    @POST
    @Path("/design")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateDesignCycle", summary = "The cycle from design conditions")
    public DesignReply design(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = DesignRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(DesignMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** What readings determine, from a query. */
    @GET
    @Path("/readings")
    @Operation(operationId = "getReadings", summary = "What the readings on a running unit determine")
    public ReadingsReply readings(@Context UriInfo uri) {
        return exchange.answer(ReadingsMapping.OPERATION, uri.getQueryParameters());
    }

    /** What readings determine, from a body. */
    @POST
    @Path("/readings")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateReadings", summary = "What the readings on a running unit determine")
    public ReadingsReply readings(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = ReadingsRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(ReadingsMapping.OPERATION, body, uri.getQueryParameters());
    }
}
