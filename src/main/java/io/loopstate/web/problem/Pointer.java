package io.loopstate.web.problem;

import com.fasterxml.jackson.core.JsonPointer;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Places in a body: RFC 6901 pointers in the URI fragment form of its section 6, as RFC 9457 shows them. */
public final class Pointer {
    /** The body as a whole. */
    public static final String ROOT = "#";

    private Pointer() {}

    /** The pointer of a member or element below another pointer. */
    public static String child(String parent, String member) {
        return parent + '/' + escape(member.replace("~", "~0").replace("/", "~1"));
    }

    /** The pointer of an element of an array. */
    public static String child(String parent, int index) {
        return parent + '/' + index;
    }

    static String of(JsonPointer pointer) {
        String result = ROOT;
        for (JsonPointer at = pointer; at != null && !at.matches(); at = at.tail()) {
            result = child(result, at.getMatchingProperty());
        }
        return result;
    }

    private static String escape(String segment) {
        // Form encoding differs from a fragment's in the space alone, as far as names are concerned.
        return URLEncoder.encode(segment, StandardCharsets.UTF_8)
                .replace("+", "%20")
                .replace("%7E", "~");
    }
}
