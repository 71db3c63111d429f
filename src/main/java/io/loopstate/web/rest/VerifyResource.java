package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.VerifyReport;
import io.loopstate.web.dto.VerifyRequest;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.verify.JUnitXml;
import io.loopstate.web.verify.Mismatch;
import io.loopstate.web.verify.Tap;
import io.loopstate.web.verify.Verifier;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
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
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Replies against expected values. */
@Path("/v1/verify")
@Tag(name = "trust")
public class VerifyResource {
    private final Verifier verifier;

    /** Called by the container. */
    @Inject
    public VerifyResource(Verifier verifier) {
        this.verifier = verifier;
    }

    /** The report on a file of cases. */
    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces({MediaType.APPLICATION_JSON, MediaType.APPLICATION_XML, MediaType.TEXT_PLAIN})
    @Operation(
            operationId = "verify",
            summary = "Replies against expected values",
            description =
                    "Answers the request of each case and compares the reply with the values expected of it, converted to "
                            + "their units. A number passes if |actual - value| <= max(absoluteTolerance, relativeTolerance "
                            + "|value|); text and truth values pass if they are equal; a pointer that leads nowhere fails. A "
                            + "mismatch is an answer, 200 with passed false, unless onMismatch=422 asks for a refusal. The "
                            + "report is JSON, XML of the form that build servers read, or TAP 14. Limits: 1000 cases of 100 "
                            + "expectations, a body of 1 MiB.")
    @Parameter(
            name = "format",
            in = ParameterIn.QUERY,
            description = "Form of the report; beats the header Accept. Default: json.",
            schema = @Schema(type = SchemaType.STRING, pattern = "^(json|junit|tap)$"))
    @Parameter(
            name = "onMismatch",
            in = ParameterIn.QUERY,
            description =
                    "Status of a report with a mismatch, 200 or 422. With 422 a JSON report becomes a problem of the type "
                            + "urn:loopstate:problem:expectations-not-met; the other forms stay what they are. Default: 200.",
            schema = @Schema(type = SchemaType.STRING, pattern = "^(200|422)$"))
    @APIResponse(
            responseCode = "200",
            description = "The report.",
            content = {
                @Content(mediaType = "application/json", schema = @Schema(implementation = VerifyReport.class)),
                @Content(mediaType = "application/xml", schema = @Schema(implementation = String.class)),
                @Content(mediaType = "text/plain", schema = @Schema(implementation = String.class))
            })
    public Response verify(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = VerifyRequest.class)))
                    JsonNode body,
            @Context UriInfo uri,
            @Context HttpHeaders headers) {
        ReportOptions options = ReportOptions.ofVerify(uri.getQueryParameters(), headers.getAcceptableMediaTypes());
        VerifyReport report = verifier.verify(body);
        int status = report.passed() ? 200 : options.onMismatch();
        return switch (options.form()) {
            case JUNIT -> reply(status, JUnitXml.of(report), ReportForm.JUNIT.contentType());
            case TAP -> reply(status, Tap.of(report), ReportForm.TAP.contentType());
            default ->
                status == 200
                        ? reply(status, report, MediaType.APPLICATION_JSON)
                        : reply(status, Mismatch.of(report), Problem.MEDIA_TYPE);
        };
    }

    private static Response reply(int status, Object entity, String type) {
        return Response.status(status).entity(entity).type(type).build();
    }
}
