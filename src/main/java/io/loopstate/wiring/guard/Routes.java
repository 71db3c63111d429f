package io.loopstate.wiring.guard;

/** Paths by what they cost. */
public final class Routes {
    private static final String CALCULATIONS = "/v1/";
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

    /** Whether a path takes part in admission: all but probes, metrics, documents and the version. */
    static boolean calculation(String path) {
        return path.startsWith(CALCULATIONS) && !path.equals(VERSION);
    }
}
