package io.loopstate.web.form;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The forms of a reply, in the order in which a client that does not mind is served. */
public enum Form {
    /** The reply itself. */
    JSON("application/json", "application/json"),
    /** Comma-separated, RFC 4180. */
    CSV("text/csv", "text/csv; charset=utf-8"),
    /** Tab-separated. */
    TSV("text/tab-separated-values", "text/tab-separated-values; charset=utf-8"),
    /** One number and nothing else. */
    TXT("text/plain", "text/plain; charset=utf-8"),
    /** One table, to print or for a web query. */
    HTML("text/html", "text/html; charset=utf-8"),
    /** Flat, without a namespace. */
    XML("application/xml", "application/xml; charset=utf-8"),
    /** A picture, where the operation has one. */
    SVG("image/svg+xml", "image/svg+xml");

    private static final Map<String, Form> NAMED =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Form::key, form -> form));

    private final String key = name().toLowerCase(Locale.ROOT);
    private final String mediaType;
    private final String contentType;

    Form(String mediaType, String contentType) {
        this.mediaType = mediaType;
        this.contentType = contentType;
    }

    /** The media type without parameters. */
    public String mediaType() {
        return mediaType;
    }

    /** The media type with its character set, for the reply's header. */
    public String contentType() {
        return contentType;
    }

    /** The name in the parameter {@code format}. */
    public String key() {
        return key;
    }

    /** The form of a name; empty where there is none. */
    public static Optional<Form> named(String key) {
        return Optional.ofNullable(NAMED.get(key));
    }

    /** The names of all forms. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Form::key).toList();
    }

    /** The first form that a media type of an Accept header covers; empty where none is. */
    static Optional<Form> accepted(String type, String subtype) {
        if (type.equals("text") && subtype.equals("xml")) {
            return Optional.of(XML);
        }
        return Arrays.stream(values())
                .filter(form -> type.equals("*")
                        || subtype.equals("*") && form.mediaType.startsWith(type + '/')
                        || form.mediaType.equals(type + '/' + subtype))
                .findFirst();
    }
}
