package io.loopstate.wiring.contract;

import io.quarkus.runtime.LaunchMode;
import io.quarkus.smallrye.openapi.runtime.OpenApiConstants;
import io.smallrye.openapi.runtime.io.Format;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Serves the contract as the build wrote it into the package. The platform reads it and writes it anew in two formats at every
 * start, which took a third of the start.
 */
@ApplicationScoped
public class ContractDocuments {
    private static final String ROUTE = "/q/openapi(\\.json|\\.yaml|\\.yml)?";

    private final Map<Format, Buffer> documents = new ConcurrentHashMap<>();

    /**
     * Keeps the document from the platform. To be called before the start. Where it has no effect, the start is slower and
     * nothing else.
     */
    public static void hideFromPlatform() {
        if (LaunchMode.current() == LaunchMode.NORMAL) {
            OpenApiConstants.classLoader = new ClassLoader(ContractDocuments.class.getClassLoader()) {
                @Override
                public InputStream getResourceAsStream(String name) {
                    return name.startsWith(OpenApiConstants.BASE_NAME) ? null : super.getResourceAsStream(name);
                }
            };
        }
    }

    void routes(@Observes Router router) {
        router.routeWithRegex(ROUTE)
                .method(HttpMethod.GET)
                .method(HttpMethod.HEAD)
                .order(-1)
                .blockingHandler(this::serve, false);
    }

    private void serve(RoutingContext context) {
        Format format = format(context);
        Buffer document = documents.computeIfAbsent(format, ContractDocuments::read);
        context.response()
                .putHeader("Content-Type", format.getMimeType() + ";charset=UTF-8")
                .end(document);
    }

    /** As the platform chooses: the ending, the parameter {@code format}, what the client accepts, YAML. */
    private static Format format(RoutingContext context) {
        String path = context.normalizedPath();
        if (path.contains(".")) {
            return path.endsWith(".json") ? Format.JSON : Format.YAML;
        }
        String accept = context.request().getHeader("Accept");
        boolean json = context.queryParam("format").stream().anyMatch("JSON"::equalsIgnoreCase)
                || accept != null && accept.contains(Format.JSON.getMimeType());
        return json ? Format.JSON : Format.YAML;
    }

    private static Buffer read(Format format) {
        String name = OpenApiConstants.BASE_NAME + '.' + format;
        try (InputStream in = ContractDocuments.class.getClassLoader().getResourceAsStream(name)) {
            return Buffer.buffer(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
