package io.loopstate.web.rest;

import jakarta.ws.rs.core.MediaType;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The forms of a report. */
enum ReportForm {
    JSON("application/json", "application/json"),
    HTML("text/html", "text/html; charset=utf-8"),
    JUNIT("application/xml", "application/xml; charset=utf-8"),
    TAP("text/plain", "text/plain; charset=utf-8");

    private final MediaType mediaType;
    private final String contentType;

    ReportForm(String mediaType, String contentType) {
        this.mediaType = MediaType.valueOf(mediaType);
        this.contentType = contentType;
    }

    /** The media type by which it is asked for. */
    MediaType mediaType() {
        return mediaType;
    }

    /** The media type of the reply. */
    String contentType() {
        return contentType;
    }

    /** The name in the parameter {@code format}. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<ReportForm> named(String key) {
        return Arrays.stream(values()).filter(form -> form.key().equals(key)).findFirst();
    }

    /** The first of these forms that the client accepts, in the order of its preference. */
    static Optional<ReportForm> accepted(List<ReportForm> offered, List<MediaType> accepted) {
        return accepted.stream()
                .flatMap(type -> offered.stream().filter(form -> type.isCompatible(form.mediaType)))
                .findFirst();
    }
}
