package io.loopstate.testing;

import java.util.List;

/** Endings of example files and the media types of their content. */
public enum BodyTypes {
    /** One value. */
    JSON("json", "application/json"),
    /** One value a line. */
    NDJSON("ndjson", "application/x-ndjson"),
    /** A table. */
    CSV("csv", "text/csv");

    private final String ending;
    private final String mediaType;

    BodyTypes(String ending, String mediaType) {
        this.ending = ending;
        this.mediaType = mediaType;
    }

    /** The media type. */
    public String mediaType() {
        return mediaType;
    }

    /** The ending of a file with a request. */
    public String request() {
        return ".request." + ending;
    }

    /** The ending of a file with a reply. */
    public String response() {
        return ".response." + ending;
    }

    /** All of them. */
    public static List<BodyTypes> all() {
        return List.of(values());
    }
}
