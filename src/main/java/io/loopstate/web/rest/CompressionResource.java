package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.chart.Svg;
import io.loopstate.web.dto.CompareGridReply;
import io.loopstate.web.dto.CompareGridRequest;
import io.loopstate.web.dto.CompareReply;
import io.loopstate.web.dto.CompareRequest;
import io.loopstate.web.dto.CylinderReply;
import io.loopstate.web.dto.CylinderRequest;
import io.loopstate.web.dto.DisplacementReply;
import io.loopstate.web.dto.DisplacementRequest;
import io.loopstate.web.dto.FitReply;
import io.loopstate.web.dto.FitRequest;
import io.loopstate.web.dto.NameplateReply;
import io.loopstate.web.dto.NameplateRequest;
import io.loopstate.web.dto.ProcessReply;
import io.loopstate.web.dto.ProcessRequest;
import io.loopstate.web.dto.RatingMapReply;
import io.loopstate.web.dto.RatingMapRequest;
import io.loopstate.web.dto.StagingReply;
import io.loopstate.web.dto.StagingRequest;
import io.loopstate.web.mapping.CompareGridMapping;
import io.loopstate.web.mapping.CompareMapping;
import io.loopstate.web.mapping.CompressionPictures;
import io.loopstate.web.mapping.CylinderMapping;
import io.loopstate.web.mapping.DisplacementMapping;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.FitMapping;
import io.loopstate.web.mapping.MachinePictures;
import io.loopstate.web.mapping.NameplateMapping;
import io.loopstate.web.mapping.ProcessMapping;
import io.loopstate.web.mapping.RatingMapMapping;
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
@Tag(name = "compression")
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
    private static final String RATING_MAP =
            "A compressor by the ten-coefficient polynomials of AHRI 540 or EN 12900, in any units and named order: flow, power, "
                    + "current and capacity at a working point, corrected to the actual suction. Outside the envelope it "
                    + "refuses, unless asked to extrapolate.";
    private static final String FIT =
            "The ten coefficients that fit tabulated points by least squares, with residuals and the conditioning of the "
                    + "points.";
    private static final String COMPARE =
            "A rating map and a displacement model of the same compressor at a working point: how far flow, power and discharge "
                    + "temperature are apart, and the efficiencies that would make them meet.";
    private static final String STAGING =
            "Two stages with cooling between them, of air or a refrigerant: the intermediate pressure of least work by "
                    + "minimization with the real fluid, beside the square-root rule, and the work saved against one stage.";

    private static final String COMPARE_GRID =
            "A rating map and a displacement model of the same compressor over a grid of evaporating and condensing dew temperatures: "
                    + "flow, power, discharge temperature and efficiencies of both at every point, and where they are farthest apart. "
                    + "A point at which one does not run is a row with the reason.";

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

    /** A compressor by its rating map, from a query. */
    @GET
    @Path("/rating-map")
    @Operation(operationId = "getRatingMap", summary = "A compressor by its rating map", description = RATING_MAP)
    public RatingMapReply ratingMap(@Context UriInfo uri) {
        return exchange.answer(RatingMapMapping.OPERATION, uri.getQueryParameters());
    }

    /** A compressor by its rating map, from a body. */
    @POST
    @Path("/rating-map")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateRatingMap", summary = "A compressor by its rating map", description = RATING_MAP)
    public RatingMapReply ratingMap(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = RatingMapRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(RatingMapMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** Coefficients of a rating map, from a query. */
    @GET
    @Path("/rating-map/fit")
    @Operation(operationId = "getRatingFit", summary = "Coefficients of a rating map", description = FIT)
    public FitReply fit(@Context UriInfo uri) {
        return exchange.answer(FitMapping.OPERATION, uri.getQueryParameters());
    }

    /** Coefficients of a rating map, from a body. */
    @POST
    @Path("/rating-map/fit")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateRatingFit", summary = "Coefficients of a rating map", description = FIT)
    public FitReply fit(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = FitRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(FitMapping.OPERATION, body, uri.getQueryParameters());
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

    /** A rating map against a displacement model, from a query. */
    @GET
    @Path("/rating-map/compare")
    @Operation(
            operationId = "getRatingComparison",
            summary = "A rating map against a displacement model",
            description = COMPARE)
    public CompareReply compare(@Context UriInfo uri) {
        return exchange.answer(CompareMapping.OPERATION, uri.getQueryParameters());
    }

    /** A rating map against a displacement model, from a body. */
    @POST
    @Path("/rating-map/compare")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateRatingComparison",
            summary = "A rating map against a displacement model",
            description = COMPARE)
    public CompareReply compare(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = CompareRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(CompareMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** A rating map against a displacement model over a grid, from a query. */
    @GET
    @Path("/rating-map/compare-grid")
    @Operation(
            operationId = "getRatingComparisonGrid",
            summary = "A rating map against a displacement model over a grid",
            description = COMPARE_GRID)
    public CompareGridReply compareGrid(@Context UriInfo uri) {
        return exchange.answer(CompareGridMapping.OPERATION, uri.getQueryParameters());
    }

    /** A rating map against a displacement model over a grid, from a body. */
    @POST
    @Path("/rating-map/compare-grid")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateRatingComparisonGrid",
            summary = "A rating map against a displacement model over a grid",
            description = COMPARE_GRID)
    public CompareGridReply compareGrid(
            @RequestBody(
                            required = true,
                            content = @Content(schema = @Schema(implementation = CompareGridRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(CompareGridMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** One compression drawn, from a query. */
    @GET
    @Path("/process")
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String processPicture(@Context UriInfo uri) {
        return exchange.draw(CompressionPictures.PROCESS, uri.getQueryParameters());
    }

    /** One compression drawn, from a body. */
    @POST
    @Path("/process")
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String processPicture(JsonNode body, @Context UriInfo uri) {
        return exchange.draw(CompressionPictures.PROCESS, body, uri.getQueryParameters());
    }

    /** A closed cylinder drawn, from a query. */
    @GET
    @Path("/cylinder")
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String cylinderPicture(@Context UriInfo uri) {
        return exchange.draw(CompressionPictures.CYLINDER, uri.getQueryParameters());
    }

    /** A closed cylinder drawn, from a body. */
    @POST
    @Path("/cylinder")
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String cylinderPicture(JsonNode body, @Context UriInfo uri) {
        return exchange.draw(CompressionPictures.CYLINDER, body, uri.getQueryParameters());
    }

    /** A rating map drawn, from a query. */
    @GET
    @Path("/rating-map")
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String ratingMapPicture(@Context UriInfo uri) {
        return exchange.draw(MachinePictures.RATING_MAP, uri.getQueryParameters());
    }

    /** A rating map drawn, from a body. */
    @POST
    @Path("/rating-map")
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String ratingMapPicture(JsonNode body, @Context UriInfo uri) {
        return exchange.draw(MachinePictures.RATING_MAP, body, uri.getQueryParameters());
    }

    /** Two stages drawn, from a query. */
    @GET
    @Path("/staging")
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String stagingPicture(@Context UriInfo uri) {
        return exchange.draw(CompressionPictures.STAGING, uri.getQueryParameters());
    }

    /** Two stages drawn, from a body. */
    @POST
    @Path("/staging")
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String stagingPicture(JsonNode body, @Context UriInfo uri) {
        return exchange.draw(CompressionPictures.STAGING, body, uri.getQueryParameters());
    }
}
