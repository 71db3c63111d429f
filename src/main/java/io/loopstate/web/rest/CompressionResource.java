package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.CylinderReply;
import io.loopstate.web.dto.CylinderRequest;
import io.loopstate.web.dto.DisplacementReply;
import io.loopstate.web.dto.DisplacementRequest;
import io.loopstate.web.dto.NameplateReply;
import io.loopstate.web.dto.NameplateRequest;
import io.loopstate.web.dto.ProcessReply;
import io.loopstate.web.dto.ProcessRequest;
import io.loopstate.web.dto.StagingReply;
import io.loopstate.web.dto.StagingRequest;
import io.loopstate.web.mapping.CylinderMapping;
import io.loopstate.web.mapping.DisplacementMapping;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.NameplateMapping;
import io.loopstate.web.mapping.ProcessMapping;
import io.loopstate.web.mapping.StagingMapping;
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

/** What a compressor does. */
@Path("/v1/compression")
@Produces(MediaType.APPLICATION_JSON)
@Blocking
@Tag(name = "compression", description = "What a compressor does: its path, size, rating map and stages.")
public class CompressionResource {
    private static final String PROCESS =
            "One compression of any refrigerant, or of air, along the path of the real fluid: isentropic, with an isentropic "
                    + "or a polytropic efficiency, with an index n, or from a measured discharge temperature, which gives the "
                    + "efficiencies. The isothermal limit and the ideal-gas formulas stand beside it. Wet suction is "
                    + "understood and warned of.";

    private static final String DISPLACEMENT =
            "What a reciprocating, rotary, scroll, screw or centrifugal compressor of known size does at a working point: flow, "
                    + "volumetric efficiency with re-expansion of the real clearance vapor, powers and losses with the motor "
                    + "in the suction vapor, the discharge vapor or outside, current, and with the liquid the capacity, the "
                    + "heat rejected and the energy balance.";
    private static final String NAMEPLATE =
            "Back from what a nameplate or catalog states at a rating point: mass flow, displacement or volumetric "
                    + "efficiency, bore and stroke, and the isentropic efficiencies behind a power.";

    private static final String CYLINDER =
            "The classroom's closed cylinder of air, or of any fluid: compressed or expanded at constant temperature, without "
                    + "heat, with an index n, or let into a vacuum; gauge and absolute side by side, with points for a plot.";
    private static final String STAGING =
            "Two stages with cooling between them, of air or a refrigerant: the intermediate pressure of least work by "
                    + "minimization with the real fluid, beside the square-root rule, and the work saved against one stage.";

    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public CompressionResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** One compression, from a query. */
    @GET
    @Path("/process")
    @Operation(operationId = "getCompression", summary = "One compression", description = PROCESS)
    public ProcessReply process(@Context UriInfo uri) {
        return exchange.answer(ProcessMapping.OPERATION, uri.getQueryParameters());
    }

    /** One compression, from a body. */
    @POST
    @Path("/process")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateCompression", summary = "One compression", description = PROCESS)
    public ProcessReply process(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = ProcessRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(ProcessMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** A compressor of known displacement, from a query. */
    @GET
    @Path("/displacement")
    @Operation(
            operationId = "getDisplacement",
            summary = "A compressor of known displacement",
            description = DISPLACEMENT)
    public DisplacementReply displacement(@Context UriInfo uri) {
        return exchange.answer(DisplacementMapping.OPERATION, uri.getQueryParameters());
    }

    /** A compressor of known displacement, from a body. */
    @POST
    @Path("/displacement")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateDisplacement",
            summary = "A compressor of known displacement",
            description = DISPLACEMENT)
    public DisplacementReply displacement(
            @RequestBody(
                            required = true,
                            content = @Content(schema = @Schema(implementation = DisplacementRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(DisplacementMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** Displacement and efficiencies from a nameplate, from a query. */
    @GET
    @Path("/nameplate")
    @Operation(
            operationId = "getNameplate",
            summary = "Displacement and efficiencies from a nameplate",
            description = NAMEPLATE)
    public NameplateReply nameplate(@Context UriInfo uri) {
        return exchange.answer(NameplateMapping.OPERATION, uri.getQueryParameters());
    }

    /** Displacement and efficiencies from a nameplate, from a body. */
    @POST
    @Path("/nameplate")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateNameplate",
            summary = "Displacement and efficiencies from a nameplate",
            description = NAMEPLATE)
    public NameplateReply nameplate(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = NameplateRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(NameplateMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** A closed cylinder, from a query. */
    @GET
    @Path("/cylinder")
    @Operation(operationId = "getCylinder", summary = "A closed cylinder", description = CYLINDER)
    public CylinderReply cylinder(@Context UriInfo uri) {
        return exchange.answer(CylinderMapping.OPERATION, uri.getQueryParameters());
    }

    /** A closed cylinder, from a body. */
    @POST
    @Path("/cylinder")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateCylinder", summary = "A closed cylinder", description = CYLINDER)
    public CylinderReply cylinder(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = CylinderRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(CylinderMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** Two stages with intercooling, from a query. */
    @GET
    @Path("/staging")
    @Operation(operationId = "getStaging", summary = "Two stages with intercooling", description = STAGING)
    public StagingReply staging(@Context UriInfo uri) {
        return exchange.answer(StagingMapping.OPERATION, uri.getQueryParameters());
    }

    /** Two stages with intercooling, from a body. */
    @POST
    @Path("/staging")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateStaging", summary = "Two stages with intercooling", description = STAGING)
    public StagingReply staging(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = StagingRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(StagingMapping.OPERATION, body, uri.getQueryParameters());
    }
}
