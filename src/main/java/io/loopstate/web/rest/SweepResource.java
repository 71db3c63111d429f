package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.batch.Sweep;
import io.loopstate.web.batch.SweepReply;
import io.loopstate.web.batch.SweepRequest;
import io.loopstate.web.chart.Svg;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
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

/** One calculation over a range of inputs. */
@Path("/v1/batch/sweep")
@Blocking
@Tag(name = "many at once")
public class SweepResource {
    private static final String SWEEP =
            "Varies one or two inputs of a calculation, by a range or a list, and returns a table: a row for each point with the "
                    + "inputs, the picked values of the reply, its warnings, its status and, where the point was refused, why. A "
                    + "refused point spoils no other. Ranges go in equal steps, up or down, in the unit of their first value; lists "
                    + "may hold names too, so that refrigerants can be compared. At most 1000 points unless the service is set "
                    + "otherwise. Options in the query hold for every point. A table for spreadsheets with format=csv; a chart of one "
                    + "to four picked values with format=svg, a line for each of up to five values of the second input.";

    private final Sweep sweep;

    /** Called by the container. */
    @Inject
    public SweepResource(Sweep sweep) {
        this.sweep = sweep;
    }

    /** A table over one or two inputs. */
    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateSweep",
            summary = "One calculation over a range of one or two inputs",
            description = SWEEP)
    public SweepReply sweep(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = SweepRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return sweep.answer(body, uri.getQueryParameters());
    }

    /** The same as a picture. */
    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(Svg.MEDIA_TYPE)
    @Operation(hidden = true)
    public String draw(JsonNode body, @Context UriInfo uri) {
        return sweep.draw(body, uri.getQueryParameters());
    }
}
