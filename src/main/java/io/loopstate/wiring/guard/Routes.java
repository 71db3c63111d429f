package io.loopstate.wiring.guard;

import io.vertx.core.http.HttpServerRequest;
import java.util.regex.Pattern;

/** Paths by what they cost. */
public final class Routes {
    private static final String CALCULATIONS = "/v1/";
    /** The page for people. */
    static final String FRONT = "/";

    private static final String FRONT_FILES = "/front/";
    /** Which form, and in which units: no calculation comes of it. */
    private static final Pattern FORM = Pattern.compile("(ask|units)=[^&]*(&(ask|units)=[^&]*)*");

    private static final String VERSION = "/v1/version";
    /** Where many calculations go. */
    public static final String BATCH = "/v1/batch";

    private static final String SWEEP = BATCH + "/sweep";
    private static final String VERIFY = "/v1/verify";
    private static final String VERIFICATION = "/v1/verification";

    private Routes() {}

    /** Whether a path answers many rows at once. */
    static boolean batch(String path) {
        return is(BATCH, path) || is(SWEEP, path) || is(VERIFY, path) || is(VERIFICATION, path);
    }

    /** Whether a path is a route, with or without a slash behind it. */
    public static boolean is(String route, String path) {
        return path.equals(route)
                || path.length() == route.length() + 1 && path.endsWith("/") && path.startsWith(route);
    }

    /** Whether a request is for the page for people as a form, or for a file of it; nothing is calculated for those. */
    static boolean emptyForm(HttpServerRequest request) {
        return request.path().startsWith(FRONT_FILES)
                || request.path().equals(FRONT)
                        && (request.query() == null
                                || FORM.matcher(request.query()).matches());
    }

    /** Whether a path takes part in admission: all but probes, metrics, documents and the version. */
    static boolean calculation(String path) {
        return path.equals(FRONT) || path.startsWith(CALCULATIONS) && !path.equals(VERSION);
    }
}
