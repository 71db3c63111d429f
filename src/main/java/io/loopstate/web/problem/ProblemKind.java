package io.loopstate.web.problem;

import java.util.Locale;

/**
 * The kinds of problem, each with its status and title. The code is the constant's name in kebab case; codes are part
 * of the contract and are never reused for another meaning.
 */
public enum ProblemKind {
    /** The request cannot be read: syntax, names, types, units. */
    INVALID_REQUEST(400, "The request cannot be read"),
    /** No such route, refrigerant or document. */
    NOT_FOUND(404, "Nothing is found here"),
    /** The route exists, but not for this method. */
    METHOD_NOT_ALLOWED(405, "The method is not allowed here"),
    /** None of the media types that the client accepts is offered. */
    NOT_ACCEPTABLE(406, "None of the accepted formats is offered here"),
    /** No key, or one that is not known here. */
    UNAUTHORIZED(401, "A key is required"),
    /** The body did not arrive in time. */
    BODY_TOO_SLOW(408, "The body did not arrive in time"),
    /** The body is longer than the limit. */
    BODY_TOO_LARGE(413, "The body is too large"),
    /** The body's media type is not read here. */
    UNSUPPORTED_MEDIA_TYPE(415, "The format of the body is not read here"),
    /** The request can be read, but what it asks for is physically impossible or contradicts itself. */
    IMPOSSIBLE_INPUT(422, "The input is physically impossible"),
    /** The request can be read, but it leaves the range in which the model is valid. */
    OUT_OF_RANGE(422, "The input is outside the range of the model"),
    /** Several states satisfy the input. */
    AMBIGUOUS_INPUT(422, "The input does not fix one state"),
    /** Values that a client expects are not those of the replies, and it asked to have this refused. */
    EXPECTATIONS_NOT_MET(422, "Expected values are not met"),
    /** An iteration of the engine gave up; its name is in the detail. */
    NOT_CONVERGED(500, "The calculation did not converge"),
    /** A defect of the service. */
    INTERNAL_ERROR(500, "The service failed"),
    /** The key has used up its requests for now. */
    TOO_MANY_REQUESTS(429, "Too many requests with this key"),
    /** More requests are under way than the service takes on. */
    OVERLOADED(503, "The service is busy"),
    /** The calculation took longer than it may. */
    DEADLINE_EXCEEDED(503, "The calculation was cancelled");

    private final int status;
    private final String title;

    ProblemKind(int status, String title) {
        this.status = status;
        this.title = title;
    }

    /** The HTTP status. */
    public int status() {
        return status;
    }

    /** The kind in words. */
    public String title() {
        return title;
    }

    /** The stable name, kebab case. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
