package io.loopstate.web.rest;

import io.loopstate.web.dto.VerificationReply;
import io.loopstate.web.verification.Verification;
import io.loopstate.web.verification.VerificationPage;
import io.loopstate.web.verification.VerificationXml;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Published values against this very engine. */
@Path("/v1/verification")
@Blocking
@Tag(
        name = "trust",
        description = "Which build answers, how well it meets published values, and whether replies meet yours.")
public class VerificationResource {
    private final Verification verification;

    /** Called by the container. */
    @Inject
    public VerificationResource(Verification verification) {
        this.verification = verification;
    }

    /** The report, computed for this request. */
    @GET
    @Produces({MediaType.APPLICATION_JSON, MediaType.TEXT_HTML, MediaType.APPLICATION_XML})
    @Operation(
            operationId = "getVerification",
            summary = "Published values against this engine",
            description =
                    "Asks this service for some 2000 published values, each by a request that anyone can repeat, and tells by "
                            + "source how many round to the printed digits, how many deviate for a reason that is known and told, "
                            + "and how many deviate unexpectedly. Values were read in a text, recalled from memory or derived by "
                            + "plain arithmetic, and say so. What is on file and not compared is listed with the reason. The "
                            + "report is JSON, a page for the screen and for paper, or XML of the form that build servers read.")
    @Parameter(
            name = "source",
            in = ParameterIn.QUERY,
            description = "Only the values of this source, by its short name in the report.",
            schema = @Schema(implementation = String.class, examples = "TRB1994"))
    @Parameter(
            name = "details",
            in = ParameterIn.QUERY,
            description = "Whether values are told one by one; true by default where one source is asked for.",
            schema = @Schema(type = SchemaType.BOOLEAN))
    @Parameter(
            name = "format",
            in = ParameterIn.QUERY,
            description = "Form of the report; beats the header Accept. Default: json.",
            schema = @Schema(type = SchemaType.STRING, pattern = "^(json|html|junit)$"))
    @APIResponse(
            responseCode = "200",
            description = "The report.",
            content = {
                @Content(mediaType = "application/json", schema = @Schema(implementation = VerificationReply.class)),
                @Content(mediaType = "text/html", schema = @Schema(implementation = String.class)),
                @Content(mediaType = "application/xml", schema = @Schema(implementation = String.class))
            })
    public Response report(@Context UriInfo uri, @Context HttpHeaders headers) {
        ReportOptions options = ReportOptions.ofVerification(
                uri.getQueryParameters(), headers.getAcceptableMediaTypes(), verification.sources());
        boolean details = options.form() != ReportForm.JSON || options.details();
        VerificationReply report = verification.report(options.source(), details);
        Object entity = switch (options.form()) {
            case HTML -> VerificationPage.of(report, options.details());
            case JUNIT -> VerificationXml.of(report);
            default -> report;
        };
        return Response.ok(entity).type(options.form().contentType()).build();
    }
}
