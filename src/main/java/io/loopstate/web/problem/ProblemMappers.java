package io.loopstate.web.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.loopstate.engine.error.DeadlineException;
import io.loopstate.engine.error.EngineException;
import jakarta.ws.rs.NotAcceptableException;
import jakarta.ws.rs.NotAllowedException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.NotSupportedException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;

/** Turns every exception of a request into a problem; nothing else decides what a refusal looks like. */
public final class ProblemMappers {
    /** After which a client that was refused for lack of capacity may come back: seconds, since spreadsheets read no dates. */
    public static final int RETRY_AFTER_SECONDS = 1;

    private static final Logger LOG = Logger.getLogger(ProblemMappers.class);

    /** A refusal made by the service itself. */
    @ServerExceptionMapper
    public Response refusal(ProblemException e) {
        return reply(e.problem());
    }

    /** An error of the engine that no mapping has placed in the request. */
    @ServerExceptionMapper
    public Response engine(EngineException e) {
        return reply(EngineProblems.inSi(e));
    }

    /** A calculation whose time was up. */
    @ServerExceptionMapper
    public Response deadline(DeadlineException e) {
        return reply(deadlineExceeded());
    }

    /** The problem of a calculation that took too long. */
    public static Problem deadlineExceeded() {
        Fault fault = Fault.request("deadline-exceeded", "The calculation took longer than one request may take.")
                .withHint("Try again, or ask for fewer rows or what-ifs in one request.");
        return Problem.of(ProblemKind.DEADLINE_EXCEEDED, List.of(fault));
    }

    /** No route; or, with a cause, a parameter that its converter could not read. */
    @ServerExceptionMapper
    public Response notFound(NotFoundException e) {
        if (e.getCause() != null) {
            Fault fault = Fault.request("unreadable-parameter", "A parameter of the URL cannot be read.")
                    .withGot(e.getCause().getMessage());
            return reply(Problem.of(ProblemKind.INVALID_REQUEST, List.of(fault)));
        }
        return reply(notFound(request().getPath()));
    }

    /** The problem for a path that leads nowhere. */
    public static Problem notFound(String path) {
        Fault fault = Fault.request("unknown-path", "There is no route at this path.")
                .withGot(path)
                .withHint("The routes are listed in the contract at /q/openapi.");
        return Problem.of(ProblemKind.NOT_FOUND, List.of(fault));
    }

    /** The route exists for other methods, which are listed. */
    @ServerExceptionMapper
    public Response notAllowed(NotAllowedException e) {
        Set<String> methods = Routes.methods(request());
        return Response.fromResponse(reply(methodNotAllowed(request().getMethod(), String.join(", ", methods))))
                .allow(methods)
                .build();
    }

    /** The problem for a method that a path does not serve. */
    public static Problem methodNotAllowed(String method, String allowed) {
        Fault fault = Fault.request("method-not-allowed", "This path does not serve this method.")
                .withGot(method)
                .withAllowed(allowed);
        return Problem.of(ProblemKind.METHOD_NOT_ALLOWED, List.of(fault));
    }

    /** The problem for a body over the limit, both in bytes; {@code got} is {@code null} where it is not known. */
    public static Problem bodyTooLarge(long limit, String got) {
        Fault fault = Fault.request("body-too-large", "The body is longer than the limit.")
                .withGot(got == null ? null : got + " bytes")
                .withAllowed("at most " + limit + " bytes")
                .withHint("Send fewer rows per request.");
        return Problem.of(ProblemKind.BODY_TOO_LARGE, List.of(fault));
    }

    /** None of the accepted media types is produced; those that are, are listed. */
    @ServerExceptionMapper
    public Response notAcceptable(NotAcceptableException e) {
        return notAcceptable();
    }

    private static Response notAcceptable() {
        Fault fault = Fault.parameter(HttpHeaders.ACCEPT, "not-acceptable", "This reply has none of these formats.")
                .withGot(header(HttpHeaders.ACCEPT))
                .withAllowed(String.join(", ", Routes.produced(request())));
        return reply(Problem.of(ProblemKind.NOT_ACCEPTABLE, List.of(fault)));
    }

    /** The body's media type is not read here; those that are, are listed. */
    @ServerExceptionMapper
    public Response notSupported(NotSupportedException e) {
        String allowed = String.join(", ", Routes.consumed(request()));
        Fault fault = Fault.parameter(
                        HttpHeaders.CONTENT_TYPE, "unsupported-media-type", "Such a body is not read here.")
                .withGot(header(HttpHeaders.CONTENT_TYPE))
                .withAllowed(allowed)
                .withHint("Send the header Content-Type: " + allowed.split(",", 2)[0]);
        return reply(Problem.of(ProblemKind.UNSUPPORTED_MEDIA_TYPE, List.of(fault)));
    }

    /** Whatever else the platform refuses keeps its status. */
    @ServerExceptionMapper
    public Response platform(WebApplicationException e) {
        int status = e.getResponse().getStatus();
        if (e.getCause() instanceof JsonProcessingException json && status == 400) {
            return reply(Problem.of(ProblemKind.INVALID_REQUEST, List.of(JsonFaults.of(json))));
        }
        if (status == ProblemKind.NOT_ACCEPTABLE.status()) {
            // Where several methods of a path differ in what they write.
            return notAcceptable();
        }
        if (status >= 500) {
            return defect(e);
        }
        if (status < 400) {
            return e.getResponse();
        }
        return reply(platform(status));
    }

    /** The problem for a status that was decided below this service. */
    public static Problem platform(int status) {
        for (ProblemKind kind : ProblemKind.values()) {
            if (kind.status() == status) {
                return Problem.of(kind, kind.title() + ".", List.of());
            }
        }
        Response.Status known = Response.Status.fromStatusCode(status);
        String title = known == null ? "The request is refused" : known.getReasonPhrase();
        return new Problem("about:blank", title, status, title + ".", "status-" + status, List.of(), null);
    }

    /** A connection that broke while the body was read: nobody is left to answer. */
    @ServerExceptionMapper
    public Response brokenConnection(IOException e) {
        if (e instanceof JsonProcessingException) {
            return defect(e);
        }
        LOG.debug("broken connection", e);
        return reply(platform(400));
    }

    /** A defect of the service: logged in full, told in one sentence. */
    @ServerExceptionMapper
    public Response defect(Throwable e) {
        ResteasyReactiveRequestContext request = request();
        LOG.errorf(
                e,
                "defect method=%s path=%s requestId=%s",
                request.getMethod(),
                request.getPath(),
                Occurrence.id(Occurrence.current()));
        return reply(internalError());
    }

    /** The problem for what one of many calculations in a request threw; a defect is logged in full. */
    public static Problem ofCalculation(Throwable e) {
        if (e instanceof ProblemException refusal) {
            return refusal.problem();
        }
        if (e instanceof EngineException engine) {
            return EngineProblems.inSi(engine);
        }
        if (e instanceof DeadlineException) {
            return deadlineExceeded();
        }
        LOG.error("defect in one of many calculations", e);
        return internalError();
    }

    /** The problem for a defect of the service. */
    public static Problem internalError() {
        return Problem.of(
                ProblemKind.INTERNAL_ERROR, "The service failed on this request; the reason is in its log.", List.of());
    }

    private static Response reply(Problem refusal) {
        Problem problem = Occurrence.refuse(refusal);
        Response.ResponseBuilder builder =
                Response.status(problem.status()).entity(problem).type(Problem.MEDIA_TYPE);
        if (problem.status() == ProblemKind.BODY_TOO_LARGE.status()) {
            // The rest of the body is still on its way and is not going to be read.
            builder.header("Connection", "close");
        }
        if (problem.status() == ProblemKind.OVERLOADED.status()) {
            builder.header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_SECONDS);
        }
        return builder.build();
    }

    private static String header(String name) {
        return request().getHttpHeaders().getHeaderString(name);
    }

    private static ResteasyReactiveRequestContext request() {
        return (ResteasyReactiveRequestContext) CurrentRequestManager.get();
    }
}
