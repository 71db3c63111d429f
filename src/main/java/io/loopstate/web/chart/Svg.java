package io.loopstate.web.chart;

import io.loopstate.web.template.Templates;
import io.quarkus.qute.Template;

/** A chart as a scalable vector graphic: well-formed XML, no script, no style sheet, no reference to anything outside. */
public final class Svg {
    /** Media type of the text. */
    public static final String MEDIA_TYPE = "image/svg+xml";

    private Svg() {}

    /** The template, read when the first chart is drawn. */
    private static final class Holder {
        static final Template TEMPLATE = Templates.read("/charts/chart.svg", MEDIA_TYPE);
    }

    /** The text of the picture; the same chart gives the same text. */
    public static String of(Chart chart) {
        return Holder.TEMPLATE.data("drawing", PageLayout.of(chart)).render();
    }
}
