package io.loopstate.web.problem;

import io.vertx.ext.web.RoutingContext;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;

/** What is known of the request that is being refused: its id, and afterwards the refusal. */
public final class Occurrence {
    private static final String ID = "loopstate.request-id";
    private static final String SENT = "loopstate.request-id.sent";
    private static final String PROBLEM = "loopstate.problem";

    private Occurrence() {}

    /** Gives a request its id. */
    public static void identify(RoutingContext context, String id, boolean sentByClient) {
        context.put(ID, id).put(SENT, sentByClient);
    }

    /** The id of a request; {@code null} before it was given one. */
    public static String id(RoutingContext context) {
        return context.get(ID);
    }

    /**
     * Notes a refusal, and puts the id of the request into it where the client sent one or the service failed. Otherwise the id
     * would keep equal requests from having equal replies, and is in the header anyway.
     */
    public static Problem refuse(RoutingContext context, Problem problem) {
        context.put(PROBLEM, problem.code());
        boolean shown = Boolean.TRUE.equals(context.get(SENT)) || problem.status() == 500;
        return shown ? problem.withRequestId(id(context)) : problem;
    }

    /** The same for the request that the calling thread is answering. */
    public static Problem refuse(Problem problem) {
        return refuse(current(), problem);
    }

    /** The code of the problem that a request was refused with; empty where it was not, or below the service. */
    public static Optional<String> problem(RoutingContext context) {
        return Optional.ofNullable(context.get(PROBLEM));
    }

    /** The request that the calling thread is answering. */
    static RoutingContext current() {
        return ((ResteasyReactiveRequestContext) CurrentRequestManager.get()).unwrap(RoutingContext.class);
    }
}
