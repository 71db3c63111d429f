package io.loopstate.web.rest;

import io.loopstate.web.dto.UnitsReply;
import io.loopstate.web.mapping.UnitList;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The units that requests may use and replies use. */
@Path("/v1/units")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
@Tag(name = "catalogue")
public class UnitsResource {
    private final UnitList units;

    /** Called by the container. */
    @Inject
    public UnitsResource(UnitList units) {
        this.units = units;
    }

    /** The kinds of quantity with their units. */
    @GET
    @Operation(
            operationId = "listUnits",
            summary = "Kinds of quantity and their units",
            description =
                    "Every kind of quantity with the units that requests may use, the units of replies in SI and IP, and for each unit its symbol, codes, size and further spellings.")
    @Parameter(
            name = "kind",
            in = ParameterIn.QUERY,
            description = "One kind of quantity, such as massFlow; all if absent.",
            schema = @Schema(implementation = String.class))
    public UnitsReply list(@Context UriInfo uri) {
        return units.list(uri.getQueryParameters());
    }
}
