package io.loopstate.web.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.loopstate.web.dto.Candidate;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * One fault of a request: where it is, what was got, what is allowed, and how to put it right.
 *
 * <p>Either {@code pointer} or {@code parameter} is present; a fault of the request as a whole has neither. Absent
 * members are {@code null} here and are left out on the wire.
 *
 * @param pointer place in the body, RFC 6901 in its URI fragment form ({@code #/suction/pressure})
 * @param parameter name of the query parameter, path parameter or header
 * @param code stable name of the fault, kebab case
 * @param detail one sentence for a person
 * @param got what was sent, shortened where long
 * @param allowed what would have been accepted
 * @param hint what to change
 * @param candidates states among which the request does not choose
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
@Schema(description = "One fault of a request: its place, what was got, what is allowed, and a hint.")
public record Fault(
        @Schema(
                description = "Place in the body as an RFC 6901 pointer in URI fragment form.",
                examples = "#/suctionPressure")
        String pointer,

        @Schema(description = "Name of the query parameter, path parameter or header.", examples = "suctionPressure")
        String parameter,

        @Schema(required = true, description = "Stable name of the fault.", examples = "unknown-name")
        String code,

        @Schema(required = true, description = "One sentence for a person.")
        String detail,

        @Schema(description = "What was sent, shortened where long.")
        String got,

        @Schema(description = "What would have been accepted.")
        String allowed,

        @Schema(description = "What to change.") String hint,

        @Schema(description = "States among which the request does not choose.")
        List<Candidate> candidates) {

    /** Copies the list. */
    public Fault {
        candidates = List.copyOf(candidates);
    }

    /** A fault in the body, at an RFC 6901 pointer in URI fragment form. */
    public static Fault at(String pointer, String code, String detail) {
        return new Fault(pointer, null, code, detail, null, null, null, List.of());
    }

    /** A fault in a query parameter, path parameter or header. */
    public static Fault parameter(String name, String code, String detail) {
        return new Fault(null, name, code, detail, null, null, null, List.of());
    }

    /** A fault of the request as a whole. */
    public static Fault request(String code, String detail) {
        return new Fault(null, null, code, detail, null, null, null, List.of());
    }

    /** The same fault at another place in a body. */
    public Fault atPointer(String place) {
        return new Fault(place, parameter, code, detail, got, allowed, hint, candidates);
    }

    /** The same fault of a parameter that the client knows by another name. */
    public Fault atParameter(String name) {
        return new Fault(pointer, name, code, detail, got, allowed, hint, candidates);
    }

    /** The same fault with what was sent, shortened to what a person reads at a glance. */
    public Fault withGot(String sent) {
        return new Fault(pointer, parameter, code, detail, Shorten.text(sent), allowed, hint, candidates);
    }

    /** The same fault with what would have been accepted. */
    public Fault withAllowed(String accepted) {
        return new Fault(pointer, parameter, code, detail, got, accepted, hint, candidates);
    }

    /** The same fault with what to change. */
    public Fault withHint(String change) {
        return new Fault(pointer, parameter, code, detail, got, allowed, change, candidates);
    }

    /** The same fault with the states among which the request does not choose. */
    public Fault withCandidates(List<Candidate> states) {
        return new Fault(pointer, parameter, code, detail, got, allowed, hint, states);
    }
}
