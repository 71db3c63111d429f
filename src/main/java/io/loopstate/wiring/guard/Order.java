package io.loopstate.wiring.guard;

/** Priorities of the filters before the routes; the highest comes first. */
public final class Order {
    /** Ids and measurement of every request. */
    public static final int TELEMETRY = 500;
    /** Headers of every reply, refusals included. */
    public static final int HEADERS = 400;
    /** Takes the key out of the URL; before anything may repeat it. */
    static final int KEY = 260;
    /** The form of the URL and second names; those start from the top again. */
    public static final int ADDRESS = 250;
    /** Who asks, and whether once more is allowed; before the body is read. After the platform's authentication (200). */
    static final int ACCESS = 150;
    /** Streams of rows, whose bodies are not read as a whole. */
    public static final int STREAMS = 145;
    /** The whole body, before it takes up a place. */
    static final int BODY = 140;
    /** A place among the requests under way. */
    static final int ADMISSION = 130;

    private Order() {}
}
