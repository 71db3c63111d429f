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
@Tag(
        name = "cycle-points",
        description = "The points of a cycle, from design conditions or from readings in the field.")
public class CyclePointsResource {
    private static final String DESIGN =
            "The points around a single-stage vapor-compression loop and what the loop does: work, "
                    + "refrigerating effect, heat to reject, coefficient of performance and EER, discharge "
                    + "temperature. With a size also flow, capacity and power. Pressure drops, heat gained and lost in "
                    + "lines, hermetic motors and gas coolers above the critical pressure are understood.";
    private static final String READINGS =
            "Turns gauge and probe readings into superheat, subcooling, pressure ratio and what else they "
                    + "determine: compressor efficiency, capacity and heat rejected by each route that the readings "
                    + "open, and how well the routes agree. Warns of liquid at the compressor, flash gas, hot "
                    + "discharge and more, each with its limit and where that comes from.";

    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public CyclePointsResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** The cycle of design conditions, from a query. */
    @GET
    @Path("/design")
    @Operation(operationId = "getDesignCycle", summary = "The cycle from design conditions", description = DESIGN)
    public DesignReply design(@Context UriInfo uri) {
        return exchange.answer(DesignMapping.OPERATION, uri.getQueryParameters());
    }

    /** The cycle of design conditions, from a body. */
    @POST
    @Path("/design")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateDesignCycle", summary = "The cycle from design conditions", description = DESIGN)
    public DesignReply design(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = DesignRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(DesignMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** What readings determine, from a query. */
    @GET
    @Path("/readings")
    @Operation(
            operationId = "getReadings",
            summary = "What the readings on a running unit determine",
            description = READINGS)
    public ReadingsReply readings(@Context UriInfo uri) {
        return exchange.answer(ReadingsMapping.OPERATION, uri.getQueryParameters());
    }

    /** What readings determine, from a body. */
    @POST
    @Path("/readings")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateReadings",
            summary = "What the readings on a running unit determine",
            description = READINGS)
    public ReadingsReply readings(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = ReadingsRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(ReadingsMapping.OPERATION, body, uri.getQueryParameters());
    }
}
