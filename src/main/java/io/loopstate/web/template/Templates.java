package io.loopstate.web.template;

import io.quarkus.qute.Engine;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.ReflectionValueResolver;
import io.quarkus.qute.Template;
import io.quarkus.qute.Variant;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads templates from resources. What they insert is escaped, and a name that is not there ends the rendering. */
public final class Templates {
    private Templates() {}

    /** The template engine, made when the first template is read. */
    private static final class Holder {
        static final Engine ENGINE = Engine.builder()
                .addDefaults()
                .addValueResolver(new ReflectionValueResolver())
                .addResultMapper(new HtmlEscaper(List.of("text/html", "image/svg+xml")))
                .strictRendering(true)
                .removeStandaloneLines(true)
                .build();
    }

    /**
     * A template.
     *
     * @param resource absolute name of the resource
     * @param mediaType {@code text/html} or {@code image/svg+xml}
     */
    public static Template read(String resource, String mediaType) {
        return Holder.ENGINE.parse(text(resource), Variant.forContentType(mediaType));
    }

    /**
     * The text of a resource.
     *
     * @param resource absolute name
     */
    public static String text(String resource) {
        try (InputStream in = Templates.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("no resource " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
