package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.BalanceReply;
import io.loopstate.web.dto.BalanceRequest;
import io.loopstate.web.mapping.BalanceMapping;
import io.loopstate.web.mapping.Exchange;
import io.smallrye.common.annotation.Blocking;
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

/** A whole machine in steady state: on workers, since what-ifs and blends take milliseconds. */
@Path("/v1/heat-rejection/balance")
@Produces(MediaType.APPLICATION_JSON)
@Blocking
@Tag(name = "heat-rejection")
public class BalanceResource {
    private static final String SUMMARY = "A whole machine in steady state, and what-ifs";
    private static final String BALANCE =
            "A compressor (by displacement or rating map), a condensing and an evaporating coil and a valve between given outdoor "
                    + "and indoor air: the evaporating and condensing level at which all of them agree, with flow, capacity "
                    + "(sensible and latent), power, heat rejected and the air behind both coils. Beside it what-ifs, each as a "
                    + "row with its differences: dirty condenser, hot day, altitude, little indoor air, condenser fan slow or off, "
                    + "another refrigerant. Where there is no balance the reply says which component has none, and why.";

    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public BalanceResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** A machine in balance, from a query. */
    @GET
    @Operation(operationId = "getBalance", summary = SUMMARY, description = BALANCE)
    public BalanceReply balance(@Context UriInfo uri) {
        return exchange.answer(BalanceMapping.OPERATION, uri.getQueryParameters());
    }

    /** A machine in balance, from a body. */
    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateBalance", summary = SUMMARY, description = BALANCE)
    public BalanceReply balance(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = BalanceRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(BalanceMapping.OPERATION, body, uri.getQueryParameters());
    }
}
