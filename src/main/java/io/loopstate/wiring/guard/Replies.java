package io.loopstate.wiring.guard;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemKind;
import io.loopstate.web.problem.ProblemMappers;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.List;

/** Refusals before a request reaches the resources, in the same form as theirs. */
@Singleton
public class Replies {
    private final ObjectMapper mapper;

    /** Called by the container. */
    @Inject
    public Replies(ObjectMapper mapper) {
        this.mapper = mapper;
    }

    /** The problem of a service that is busy. */
    public static Problem overloaded(String detail) {
        Fault fault = Fault.request("overloaded", detail).withHint("Try again after the seconds in Retry-After.");
        return Problem.of(ProblemKind.OVERLOADED, List.of(fault));
    }

    /** Ends a request with a problem. */
    public void send(RoutingContext context, Problem problem) {
        HttpServerResponse response = context.response();
        if (problem.status() == 413 || problem.status() == 408) {
            // the rest of the body is still on its way and is not going to be read
            response.putHeader("Connection", "close");
            response.endHandler(done -> context.request().connection().close());
        }
        if (problem.status() == 503) {
            response.putHeader("Retry-After", Integer.toString(ProblemMappers.RETRY_AFTER_SECONDS));
        }
        byte[] body = json(problem);
        response.setStatusCode(problem.status())
                .putHeader("Content-Type", Problem.MEDIA_TYPE)
                .putHeader("Content-Length", Integer.toString(body.length));
        if (context.request().method().equals(HttpMethod.HEAD)) {
            response.end();
        } else {
            response.end(Buffer.buffer(body));
        }
    }

    private byte[] json(Problem problem) {
        try {
            return mapper.writeValueAsBytes(problem);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
