package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.AirSideReply;
import io.loopstate.web.dto.AirSideRequest;
import io.loopstate.web.dto.DutyReply;
import io.loopstate.web.dto.DutyRequest;
import io.loopstate.web.mapping.AirSideMapping;
import io.loopstate.web.mapping.DutyMapping;
import io.loopstate.web.mapping.Exchange;
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

/** Where the heat goes. */
@Path("/v1/heat-rejection")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
@Tag(name = "heat-rejection")
public class HeatRejectionResource {
    private static final String DUTY =
            "The heat that a condenser or gas cooler has to give off, per mass and in all, split into desuperheating, "
                    + "condensing and subcooling, and the heat rejection factor. From states in the condenser, from the "
                    + "compression that leads there, from capacity and power of the machine, or from several of these, "
                    + "which then check each other. Hermetic and open compressors and oil coolers are understood.";
    private static final String AIR_SIDE =
            "Airflow, entering air, leaving air and heat of a coil: any three give the fourth, with real moist air at this "
                    + "altitude. Splits an evaporator's heat into sensible and latent, shows what the factors 1.08, 4.5 and "
                    + "0.68 are here, and, given the refrigerant's temperature, condensing over ambient, approach and "
                    + "conductance.";

    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public HeatRejectionResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** The duty of a condenser, from a query. */
    @GET
    @Path("/duty")
    @Operation(operationId = "getDuty", summary = "The heat that a condenser has to give off", description = DUTY)
    public DutyReply duty(@Context UriInfo uri) {
        return exchange.answer(DutyMapping.OPERATION, uri.getQueryParameters());
    }

    /** The duty of a condenser, from a body. */
    @POST
    @Path("/duty")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateDuty", summary = "The heat that a condenser has to give off", description = DUTY)
    public DutyReply duty(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = DutyRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(DutyMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** The air of a coil, from a query. */
    @GET
    @Path("/air-side")
    @Operation(operationId = "getAirSide", summary = "Airflow, air and heat of a coil", description = AIR_SIDE)
    public AirSideReply airSide(@Context UriInfo uri) {
        return exchange.answer(AirSideMapping.OPERATION, uri.getQueryParameters());
    }

    /** The air of a coil, from a body. */
    @POST
    @Path("/air-side")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateAirSide", summary = "Airflow, air and heat of a coil", description = AIR_SIDE)
    public AirSideReply airSide(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = AirSideRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(AirSideMapping.OPERATION, body, uri.getQueryParameters());
    }
}
