package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.MoistAirReply;
import io.loopstate.web.dto.MoistAirRequest;
import io.loopstate.web.dto.SaturationReply;
import io.loopstate.web.dto.SaturationRequest;
import io.loopstate.web.dto.StateReply;
import io.loopstate.web.dto.StateRequest;
import io.loopstate.web.dto.TableReply;
import io.loopstate.web.dto.TableRequest;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.MoistAirMapping;
import io.loopstate.web.mapping.SaturationMapping;
import io.loopstate.web.mapping.StateMapping;
import io.loopstate.web.mapping.TableMapping;
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

/** Thermodynamic properties of refrigerants. Tables run on workers, single states on the event loop. */
@Path("/v1/properties")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "properties", description = "States of refrigerants and of moist air, and tables of them.")
public class PropertiesResource {
    private static final String STATE =
            "Everything that the equation of state knows of one state: phase, temperature, pressure, "
                    + "density, enthalpy, entropy, heat capacities, speed of sound, distance from saturation, "
                    + "viscosity and thermal conductivity. Give the refrigerant and two variables, as a gauge and a "
                    + "probe read them.";
    private static final String SATURATION =
            "The pressure-temperature chart and the saturated states behind it: give a gauge reading and get "
                    + "the temperatures at which the refrigerant boils and condenses, or a temperature and get the "
                    + "pressures. Superheat counts from the dew point, subcooling from the bubble point.";
    private static final String TABLE =
            "The tables of a handbook for any range and any units: saturation over temperature or pressure, "
                    + "or superheated vapor at one pressure over temperature or superheat; at most 500 rows.";

    private static final String MOIST_AIR =
            "The psychrometric chart: wet bulb, humidity, dew point, enthalpy, volume and density of air at this altitude, "
                    + "and what the factors 1.08, 4.5 and 0.68 are for it. Give any two of dry bulb, wet bulb, relative "
                    + "humidity, dew point, humidity ratio and enthalpy.";

    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public PropertiesResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** One state, from a query. */
    @GET
    @Path("/state")
    @NonBlocking
    @Operation(operationId = "getState", summary = "One state from two of its variables", description = STATE)
    public StateReply state(@Context UriInfo uri) {
        return exchange.answer(StateMapping.OPERATION, uri.getQueryParameters());
    }

    /** One state, from a body. */
    @POST
    @Path("/state")
    @Consumes(MediaType.APPLICATION_JSON)
    @NonBlocking
    @Operation(operationId = "calculateState", summary = "One state from two of its variables", description = STATE)
    public StateReply state(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = StateRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(StateMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** Both sides of the dome, from a query. */
    @GET
    @Path("/saturation")
    @NonBlocking
    @Operation(
            operationId = "getSaturation",
            summary = "Bubble and dew point at a temperature or a pressure",
            description = SATURATION)
    public SaturationReply saturation(@Context UriInfo uri) {
        return exchange.answer(SaturationMapping.OPERATION, uri.getQueryParameters());
    }

    /** Both sides of the dome, from a body. */
    @POST
    @Path("/saturation")
    @Consumes(MediaType.APPLICATION_JSON)
    @NonBlocking
    @Operation(
            operationId = "calculateSaturation",
            summary = "Bubble and dew point at a temperature or a pressure",
            description = SATURATION)
    public SaturationReply saturation(
            @RequestBody(
                            required = true,
                            content = @Content(schema = @Schema(implementation = SaturationRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(SaturationMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** A table, from a query. */
    @GET
    @Path("/table")
    @Operation(
            operationId = "getTable",
            summary = "A table of saturation or of superheated vapor over a range",
            description = TABLE)
    public TableReply table(@Context UriInfo uri) {
        return exchange.answer(TableMapping.OPERATION, uri.getQueryParameters());
    }

    /** A table, from a body. */
    @POST
    @Path("/table")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateTable",
            summary = "A table of saturation or of superheated vapor over a range",
            description = TABLE)
    public TableReply table(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = TableRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(TableMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** Moist air, from a query. */
    @GET
    @Path("/moist-air")
    @NonBlocking
    @Operation(operationId = "getMoistAir", summary = "Moist air from two of its variables", description = MOIST_AIR)
    public MoistAirReply moistAir(@Context UriInfo uri) {
        return exchange.answer(MoistAirMapping.OPERATION, uri.getQueryParameters());
    }

    /** Moist air, from a body. */
    @POST
    @Path("/moist-air")
    @Consumes(MediaType.APPLICATION_JSON)
    @NonBlocking
    @Operation(
            operationId = "calculateMoistAir",
            summary = "Moist air from two of its variables",
            description = MOIST_AIR)
    public MoistAirReply moistAir(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = MoistAirRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(MoistAirMapping.OPERATION, body, uri.getQueryParameters());
    }
}
