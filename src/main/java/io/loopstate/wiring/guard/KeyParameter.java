package io.loopstate.wiring.guard;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes the key out of the query before anything else sees it, logs and refusals included: spreadsheets can send no header.
 * Where the service is open a key is taken out as well, so that a worksheet need not know.
 *
 * <p>A semicolon is a character of a value, as in {@code sep=;}: the platform would take it for a separator of parameters, unlike
 * whoever looks at the query before it.
 */
@ApplicationScoped
public class KeyParameter {
    /** The parameter that carries a key. */
    static final String NAME = "key";

    private static final String PREFIX = NAME + '=';
    private static final String TAKEN = "loopstate.key";

    void filter(@Observes Filters filters) {
        filters.register(this::take, Order.KEY);
    }

    /** The key of a request; the header's where there are both; {@code null} where there is none. */
    static String key(RoutingContext context) {
        String header = context.request().getHeader(Access.HEADER);
        return header == null ? context.get(TAKEN) : header;
    }

    private void take(RoutingContext context) {
        String query = context.request().query();
        boolean keyed = query != null && (query.startsWith(PREFIX) || query.contains('&' + PREFIX));
        if (!keyed && (query == null || query.indexOf(';') < 0)) {
            context.next();
            return;
        }
        List<String> others = new ArrayList<>();
        for (String pair : query.split("&")) {
            if (pair.startsWith(PREFIX)) {
                context.put(TAKEN, decoded(pair.substring(PREFIX.length())));
            } else {
                others.add(pair.replace(";", "%3B"));
            }
        }
        String uri = context.request().uri();
        String path = uri.substring(0, uri.indexOf('?'));
        context.reroute(others.isEmpty() ? path : path + '?' + String.join("&", others));
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return text;
        }
    }
}
