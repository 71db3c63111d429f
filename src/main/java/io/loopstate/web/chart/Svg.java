package io.loopstate.web.chart;

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

/** A chart as a scalable vector graphic: well-formed XML, no script, no style sheet, no reference to anything outside. */
public final class Svg {
    /** Media type of the text. */
    public static final String MEDIA_TYPE = "image/svg+xml";

    private Svg() {}

    /** The template, read when the first chart is drawn. */
    private static final class Holder {
        static final Template TEMPLATE = engine().parse(read(), Variant.forContentType(MEDIA_TYPE));

        private static Engine engine() {
            return Engine.builder()
                    .addDefaults()
                    .addValueResolver(new ReflectionValueResolver())
                    .addResultMapper(new HtmlEscaper(List.of(MEDIA_TYPE)))
                    .strictRendering(true)
                    .removeStandaloneLines(true)
                    .build();
        }

        private static String read() {
            try (InputStream in = Svg.class.getResourceAsStream("/charts/chart.svg")) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The text of the picture; the same chart gives the same text. */
    public static String of(Chart chart) {
        return Holder.TEMPLATE.data("drawing", Layout.of(chart)).render();
    }
}
