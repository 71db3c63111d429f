package io.loopstate.wiring.guard;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import io.loopstate.web.mapping.Refrigerants;
import io.quarkus.runtime.ExecutorRecorder;
import io.vertx.core.Context;
import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.handlers.NonBlockingHandler;
import org.jboss.resteasy.reactive.server.spi.ServerRestHandler;

/**
 * Moves a request from the event loop to a worker thread where it would take longer than a millisecond: a refrigerant whose
 * lines are not made yet, which takes up to 100 ms; every composition of a client's own, whose lines may be made and
 * forgotten again; a state from neither pressure nor temperature, which takes a blend 1 ms to seconds; a long body.
 */
@Singleton
public class Workers {
    /** Property of a request: its body, where it was read to decide where it is answered. */
    public static final String TREE = "loopstate.body-tree";

    private static final String REFRIGERANT = "refrigerant";
    private static final String STATE = "/v1/properties/state";
    /** With one of these a state is found in 0.2 ms at the most. */
    private static final Set<String> DIRECT = Set.of("pressure", "temperature");

    /** Bytes of JSON that are read in some 0.2 ms. */
    private static final int LONG_BODY = 16 * 1024;

    private static final ServerRestHandler STAY = request -> {};

    private final Refrigerants refrigerants;
    private final ObjectReader json;

    /** Called by the container. */
    @Inject
    public Workers(Refrigerants refrigerants, ObjectMapper mapper) {
        this.refrigerants = refrigerants;
        this.json = mapper.reader();
    }

    /** The body was read before the routes ({@link Bodies}); the platform does not look for it there. */
    @ServerRequestFilter(preMatching = true)
    public void handOver(ContainerRequestContext context) {
        ResteasyReactiveRequestContext request = request();
        Buffer body = body(request);
        if (body != null) {
            request.setInputStream(new ByteArrayInputStream(body.getBytes()));
        }
    }

    /** Decides where the rest of the request is done. */
    @ServerRequestFilter
    public void move(ContainerRequestContext context) {
        if (!Context.isOnEventLoopThread()) {
            return;
        }
        ResteasyReactiveRequestContext request = request();
        if (!quick(context, body(request))) {
            keep(request.getHandlers(), request.getPosition());
            request.suspend();
            request.resume(ExecutorRecorder.getCurrent());
        }
    }

    /**
     * Takes the steps out of the chain of a route that lead back to the event loop before the resource is called. A request
     * that was not moved is there anyway. The chain is shared, and every request would do the same to it.
     */
    private static void keep(ServerRestHandler[] chain, int from) {
        for (int i = from; i < chain.length; i++) {
            if (chain[i] instanceof NonBlockingHandler) {
                chain[i] = STAY;
            }
        }
    }

    private boolean quick(ContainerRequestContext context, Buffer body) {
        boolean state = context.getUriInfo().getPath().startsWith(STATE);
        if (body == null) {
            return quickQuery(context.getUriInfo().getQueryParameters(), state);
        }
        return body.length() <= LONG_BODY && quickBody(context, body, state);
    }

    private boolean quickQuery(MultivaluedMap<String, String> parameters, boolean state) {
        String refrigerant = parameters.getFirst(REFRIGERANT);
        return (refrigerant == null || refrigerants.ready(refrigerant))
                && (!state || !Collections.disjoint(DIRECT, parameters.keySet()));
    }

    private boolean quickBody(ContainerRequestContext context, Buffer body, boolean state) {
        JsonNode tree;
        try {
            tree = json.readTree(body.getBytes());
        } catch (IOException e) {
            // whoever reads the body tells what is wrong with it
            return true;
        }
        if (tree.isMissingNode()) {
            return true;
        }
        context.setProperty(TREE, tree);
        JsonNode refrigerant = tree.get(REFRIGERANT);
        return (refrigerant == null || refrigerant.isTextual() && refrigerants.ready(refrigerant.textValue()))
                && (!state || !tree.isObject() || DIRECT.stream().anyMatch(tree::has));
    }

    private static Buffer body(ResteasyReactiveRequestContext request) {
        return request.unwrap(RoutingContext.class).body().buffer();
    }

    private static ResteasyReactiveRequestContext request() {
        return (ResteasyReactiveRequestContext) CurrentRequestManager.get();
    }
}
