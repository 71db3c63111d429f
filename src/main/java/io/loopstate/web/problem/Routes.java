package io.loopstate.web.problem;

import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jboss.resteasy.reactive.server.core.Deployment;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.handlers.ClassRoutingHandler;
import org.jboss.resteasy.reactive.server.handlers.RestInitialHandler.InitialMatch;
import org.jboss.resteasy.reactive.server.mapping.RequestMapper;
import org.jboss.resteasy.reactive.server.mapping.RuntimeResource;
import org.jboss.resteasy.reactive.server.spi.ServerRestHandler;

/**
 * What the routing knows of a path: the platform answers 405, 406 and 415 without saying what would have been right.
 */
public final class Routes {
    private Routes() {}

    /** The methods served at the request's path, sorted, with HEAD and OPTIONS; empty where there is no route. */
    public static Set<String> methods(ResteasyReactiveRequestContext request) {
        Set<String> methods = new TreeSet<>();
        for (Match match : matches(request)) {
            methods.add(match.method);
        }
        if (methods.contains(HttpMethod.GET)) {
            methods.add(HttpMethod.HEAD);
        }
        if (!methods.isEmpty()) {
            methods.add(HttpMethod.OPTIONS);
        }
        return methods;
    }

    /** The media types that the request's path and method read, in the order declared. */
    static List<String> consumed(ResteasyReactiveRequestContext request) {
        List<String> types = new ArrayList<>();
        for (Match match : matches(request)) {
            if (match.serves(request.getMethod())) {
                match.resource.getConsumes().forEach(type -> types.add(type.toString()));
            }
        }
        return types.stream().distinct().toList();
    }

    /** The media types that the request's path and method write, in the order declared. */
    static List<String> produced(ResteasyReactiveRequestContext request) {
        List<String> types = new ArrayList<>();
        for (Match match : matches(request)) {
            if (match.serves(request.getMethod()) && match.resource.getProduces() != null) {
                for (MediaType type : match.resource.getProduces().getSortedOriginalMediaTypes()) {
                    types.add(type.toString());
                }
            }
        }
        return types.stream().distinct().toList();
    }

    private record Match(String method, RuntimeResource resource) {
        boolean serves(String asked) {
            return method.equals(asked) || asked.equals(HttpMethod.HEAD) && method.equals(HttpMethod.GET);
        }
    }

    private static List<Match> matches(ResteasyReactiveRequestContext request) {
        Deployment deployment = request.getDeployment();
        RequestMapper<InitialMatch> classes = new RequestMapper<>(deployment.getClassMappers());
        String path = request.getPathWithoutPrefix();
        List<Match> found = new ArrayList<>();
        for (RequestMapper.RequestMatch<InitialMatch> match = classes.map(path);
                match != null;
                match = classes.continueMatching(path, match)) {
            String remaining = match.remaining.isEmpty() ? "/" : match.remaining;
            for (ServerRestHandler handler : match.value.handlers) {
                if (handler instanceof ClassRoutingHandler routing) {
                    routing.getMappers().forEach((method, mapper) -> add(found, method, mapper, remaining));
                }
            }
        }
        return found;
    }

    private static void add(List<Match> found, String method, RequestMapper<RuntimeResource> mapper, String remaining) {
        RequestMapper.RequestMatch<RuntimeResource> match = method == null ? null : mapper.map(remaining);
        if (match != null) {
            found.add(new Match(method, match.value));
        }
    }
}
