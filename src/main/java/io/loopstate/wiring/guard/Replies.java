package io.loopstate.wiring.guard;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Occurrence;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemKind;
import io.loopstate.web.problem.ProblemMappers;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.List;

/** Refusals before a request reaches the resources, in the same form as theirs. */
@Singleton
public class Replies {
    /** Milliseconds until a refusal has been read that the client's bytes still cross. */
    private static final long LAST_WORDS = 200;

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
    public void send(RoutingContext context, Problem refusal) {
        if (refusal.status() == 413 || refusal.status() == 408) {
            leaveUnread(context);
        }
        write(context, refusal);
    }

    private void write(RoutingContext context, Problem refusal) {
        Problem problem = Occurrence.refuse(context, refusal);
        HttpServerResponse response = context.response();
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

    /** Ends a request, whose body is not going to be read, with a problem. */
    public void sendUnread(RoutingContext context, Problem problem) {
        leaveUnread(context);
        write(context, problem);
    }

    /** Drops what still arrives for a moment: a connection closed at once would take the reply with it. */
    private static void leaveUnread(RoutingContext context) {
        HttpServerRequest request = context.request();
        context.response().putHeader("Connection", "close");
        context.addEndHandler(done ->
                context.vertx().setTimer(LAST_WORDS, id -> request.connection().close()));
        if (!request.isEnded()) {
            request.handler(nothing -> {}).resume();
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
