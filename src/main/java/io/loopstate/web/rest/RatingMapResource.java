package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.CompareGridReply;
import io.loopstate.web.dto.CompareGridRequest;
import io.loopstate.web.dto.CompareReply;
import io.loopstate.web.dto.CompareRequest;
import io.loopstate.web.dto.FitReply;
import io.loopstate.web.dto.FitRequest;
import io.loopstate.web.dto.RatingMapReply;
import io.loopstate.web.dto.RatingMapRequest;
import io.loopstate.web.mapping.CompareGridMapping;
import io.loopstate.web.mapping.CompareMapping;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.FitMapping;
import io.loopstate.web.mapping.RatingMapMapping;
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

/** A compressor by its maker's polynomials. */
@Path("/v1/compression/rating-map")
@Produces(MediaType.APPLICATION_JSON)
@Blocking
@Tag(name = "compression")
public class RatingMapResource {
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

    private static final String COMPARE_GRID =
            "A rating map and a displacement model of the same compressor over a grid of evaporating and condensing dew temperatures: "
                    + "flow, power, discharge temperature and efficiencies of both at every point, and where they are farthest apart. "
                    + "A point at which one does not run is a row with the reason.";

    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public RatingMapResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** A compressor by its rating map, from a query. */
    @GET
    @Operation(operationId = "getRatingMap", summary = "A compressor by its rating map", description = RATING_MAP)
    public RatingMapReply ratingMap(@Context UriInfo uri) {
        return exchange.answer(RatingMapMapping.OPERATION, uri.getQueryParameters());
    }

    /** A compressor by its rating map, from a body. */
    @POST
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
    @Path("/fit")
    @Operation(operationId = "getRatingFit", summary = "Coefficients of a rating map", description = FIT)
    public FitReply fit(@Context UriInfo uri) {
        return exchange.answer(FitMapping.OPERATION, uri.getQueryParameters());
    }

    /** Coefficients of a rating map, from a body. */
    @POST
    @Path("/fit")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateRatingFit", summary = "Coefficients of a rating map", description = FIT)
    public FitReply fit(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = FitRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(FitMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** A rating map against a displacement model, from a query. */
    @GET
    @Path("/compare")
    @Operation(
            operationId = "getRatingComparison",
            summary = "A rating map against a displacement model",
            description = COMPARE)
    public CompareReply compare(@Context UriInfo uri) {
        return exchange.answer(CompareMapping.OPERATION, uri.getQueryParameters());
    }

    /** A rating map against a displacement model, from a body. */
    @POST
    @Path("/compare")
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
    @Path("/compare-grid")
    @Operation(
            operationId = "getRatingComparisonGrid",
            summary = "A rating map against a displacement model over a grid",
            description = COMPARE_GRID)
    public CompareGridReply compareGrid(@Context UriInfo uri) {
        return exchange.answer(CompareGridMapping.OPERATION, uri.getQueryParameters());
    }

    /** A rating map against a displacement model over a grid, from a body. */
    @POST
    @Path("/compare-grid")
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
}
