package io.loopstate.web.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The body of every refusal: RFC 9457, {@code application/problem+json}.
 *
 * @param type stable URI of the kind of problem, {@code urn:loopstate:problem:} and the code
 * @param title the kind of problem in words, the same for every occurrence
 * @param status the HTTP status
 * @param detail this occurrence in one sentence
 * @param code the stable last part of the type, kebab case
 * @param errors every fault found; empty where the problem has no place in it
 * @param requestId the id of the request; {@code null} where the client sent none and the service did not fail
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
@JsonPropertyOrder({"type", "title", "status", "detail", "code", "errors", "requestId"})
@Schema(description = "A refusal in the form of RFC 9457, with every fault of the request at once.")
public record Problem(
        @Schema(
                required = true,
                description = "Stable URI of the kind of problem.",
                examples = "urn:loopstate:problem:invalid-request")
        String type,

        @Schema(required = true, description = "The kind of problem in words.")
        String title,

        @Schema(required = true, description = "The HTTP status.", examples = "400")
        int status,

        @Schema(required = true, description = "This occurrence in one sentence.")
        String detail,

        @Schema(required = true, description = "The last part of the type.", examples = "invalid-request")
        String code,

        @Schema(description = "Every fault found.") List<Fault> errors,

        @Schema(
                description =
                        "The id of the request, as in the header X-Request-Id and in the log. It stands here where the "
                                + "client sent it, and where the service failed.")
        String requestId) {

    /** Media type of a refusal. */
    public static final String MEDIA_TYPE = "application/problem+json";

    private static final String TYPE_PREFIX = "urn:loopstate:problem:";

    /** Copies the list of faults. */
    public Problem {
        errors = List.copyOf(errors);
    }

    /** A problem of a kind, with its faults. */
    public static Problem of(ProblemKind kind, String detail, List<Fault> errors) {
        return new Problem(TYPE_PREFIX + kind.code(), kind.title(), kind.status(), detail, kind.code(), errors, null);
    }

    /** A problem of a kind, whose detail counts the faults. */
    public static Problem of(ProblemKind kind, List<Fault> errors) {
        return of(kind, summary(errors), errors);
    }

    /** The same problem with each of its faults told otherwise, as where they stand in a row or under a heading. */
    public Problem retold(UnaryOperator<Fault> fault) {
        return new Problem(
                type, title, status, detail, code, errors.stream().map(fault).toList(), requestId);
    }

    /** The same problem of a request with this id. */
    Problem withRequestId(String id) {
        return new Problem(type, title, status, detail, code, errors, id);
    }

    private static String summary(List<Fault> errors) {
        if (errors.size() == 1) {
            return errors.get(0).detail();
        }
        return String.format(Locale.ROOT, "The request has %d faults; each is listed under errors.", errors.size());
    }
}
