package io.loopstate.wiring.guard;

/** Paths by what they cost. */
final class Routes {
    private static final String CALCULATIONS = "/v1/";
    private static final String VERSION = "/v1/version";
    private static final String BATCH = "/v1/batch";
    private static final String VERIFY = "/v1/verify";

    private Routes() {}

    /** Whether a path answers many rows at once. */
    static boolean batch(String path) {
        String plain = path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
        return plain.equals(BATCH) || plain.equals(VERIFY);
    }

    /** Whether a path takes part in admission: all but probes, metrics, documents and the version. */
    static boolean calculation(String path) {
        return path.startsWith(CALCULATIONS) && !path.equals(VERSION);
    }
}
