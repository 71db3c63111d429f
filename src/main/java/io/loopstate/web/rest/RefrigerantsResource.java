package io.loopstate.web.rest;

import io.loopstate.web.dto.AccuracyClass;
import io.loopstate.web.dto.RefrigerantItem;
import io.loopstate.web.dto.RefrigerantKind;
import io.loopstate.web.dto.RefrigerantsReply;
import io.loopstate.web.dto.SafetyGroup;
import io.loopstate.web.mapping.Catalogue;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The catalogue of refrigerants. Runs on workers: the first list reads every coefficient file. */
@Path("/v1/refrigerants")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "catalogue", description = "What the service knows: refrigerants and units.")
public class RefrigerantsResource {
    private final Catalogue catalogue;

    /** Called by the container. */
    @Inject
    public RefrigerantsResource(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The refrigerants that the query selects. */
    @GET
    @Operation(
            operationId = "listRefrigerants",
            summary = "The refrigerants of the catalogue",
            description =
                    "Every refrigerant with its identity, critical point, normal boiling point, range of the model, safety group, global warming and ozone depletion potentials and published sources, blends with composition, phase boundary and the origin of every pair; filtered where the query says so.")
    @Parameter(
            name = "kind",
            in = ParameterIn.QUERY,
            description = "Only this kind.",
            schema = @Schema(implementation = RefrigerantKind.class))
    @Parameter(
            name = "safetyGroup",
            in = ParameterIn.QUERY,
            description = "Only this group.",
            schema = @Schema(implementation = SafetyGroup.class))
    @Parameter(
            name = "accuracyClass",
            in = ParameterIn.QUERY,
            description = "Only blends whose model is founded so.",
            schema = @Schema(implementation = AccuracyClass.class))
    @Parameter(
            name = "component",
            in = ParameterIn.QUERY,
            description = "Only blends with this component, by designation, name or alias.",
            schema = @Schema(implementation = String.class))
    @Parameter(
            name = "maxGlobalWarmingPotential",
            in = ParameterIn.QUERY,
            description =
                    "Only refrigerants whose global warming potential is known and at most this, by the newest assessment "
                            + "on file over 100 years.",
            schema = @Schema(implementation = Double.class, minimum = "0"))
    @Parameter(
            name = "units",
            in = ParameterIn.QUERY,
            description = "Units of the reply: SI (default) or IP, then units of single kinds if wanted.",
            schema = @Schema(implementation = String.class))
    public RefrigerantsReply list(@Context UriInfo uri) {
        return catalogue.list(uri.getQueryParameters());
    }

    /** One refrigerant. */
    @GET
    @Path("/{designation}")
    @Operation(
            operationId = "getRefrigerant",
            summary = "One refrigerant of the catalogue",
            description = "One refrigerant, by designation, name or alias.")
    @Parameter(
            name = "units",
            in = ParameterIn.QUERY,
            description = "Units of the reply: SI (default) or IP, then units of single kinds if wanted.",
            schema = @Schema(implementation = String.class))
    public RefrigerantItem one(
            @Parameter(description = "Designation, name or alias; case, hyphen and the leading R do not matter.")
                    @PathParam("designation")
                    String designation,
            @Context UriInfo uri) {
        return catalogue.one(designation, uri.getQueryParameters());
    }
}
