package io.loopstate.web.verification;

import io.loopstate.web.dto.VerificationReply;
import io.loopstate.web.dto.VerificationTotals;
import io.loopstate.web.dto.VerifiedOutcome;
import io.loopstate.web.dto.VerifiedSource;
import io.loopstate.web.dto.VerifiedValue;
import io.loopstate.web.template.Templates;
import io.quarkus.qute.Template;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A report as a page, for people and for paper. */
public final class VerificationPage {
    private static final String NONE = "–";

    private VerificationPage() {}

    /** The template, read when the first page is written. */
    private static final class Holder {
        static final Template TEMPLATE = Templates.read("/pages/verification.html", "text/html");
    }

    /**
     * A line of the table of sources.
     *
     * @param key short name
     * @param link to the page of this source
     * @param citation in full
     * @param address of the digital object, empty where there is none
     * @param cells numbers
     * @param failed whether a value is unexpected
     */
    public record SourceLine(
            String key, String link, String citation, String address, List<String> cells, boolean failed) {}

    /**
     * Why some values are known to deviate.
     *
     * @param reason in words
     * @param values how many
     * @param worst of them, in half units of the last printed digit
     */
    public record ReasonLine(String reason, int values, String worst) {}

    /**
     * A line of the table of values.
     *
     * @param request path and query, to be followed
     * @param cells as text
     * @param failed whether the value is unexpected
     */
    public record ValueLine(String request, List<String> cells, boolean failed) {}

    /**
     * Values under one heading.
     *
     * @param anchor in the page
     * @param heading in words
     * @param lines a value each
     */
    public record Section(String anchor, String heading, List<ValueLine> lines) {}

    /**
     * The text of the page.
     *
     * @param report with single values
     * @param details whether they are shown; unexpected ones always are
     */
    public static String of(VerificationReply report, boolean details) {
        List<VerifiedValue> values = report.sources().stream()
                .flatMap(source -> source.values().stream())
                .toList();
        return Holder.TEMPLATE
                .data("report", report)
                .data("totals", report.totals())
                .data("worst", rounded(report.totals().worstDeviation()))
                .data(
                        "sources",
                        report.sources().stream().map(VerificationPage::line).toList())
                .data("reasons", reasons(values))
                .data("sections", sections(report, values, details))
                .render();
    }

    private static SourceLine line(VerifiedSource source) {
        VerificationTotals totals = source.totals();
        return new SourceLine(
                source.source(),
                "/v1/verification?format=html&source=" + URLEncoder.encode(source.source(), StandardCharsets.UTF_8),
                source.citation(),
                source.doi() == null ? "" : "https://doi.org/" + source.doi(),
                List.of(
                        origins(totals),
                        Integer.toString(totals.values()),
                        Integer.toString(totals.met()),
                        Integer.toString(totals.knownDeviations()),
                        Integer.toString(totals.unexpected()),
                        rounded(totals.worstDeviation()),
                        rounded(totals.worstKnownDeviation())),
                totals.unexpected() > 0);
    }

    private static String origins(VerificationTotals totals) {
        List<String> words = new ArrayList<>();
        if (totals.read() > 0) {
            words.add("read");
        }
        if (totals.fromMemory() > 0) {
            words.add("memory");
        }
        if (totals.derived() > 0) {
            words.add("derived");
        }
        return String.join(", ", words);
    }

    private static List<ReasonLine> reasons(List<VerifiedValue> values) {
        Map<String, List<VerifiedValue>> byReason = new LinkedHashMap<>();
        values.stream()
                .filter(value -> value.outcome() == VerifiedOutcome.KNOWN_DEVIATION)
                .forEach(value -> byReason.computeIfAbsent(value.reason(), key -> new ArrayList<>())
                        .add(value));
        return byReason.entrySet().stream()
                .map(entry -> new ReasonLine(
                        entry.getKey(),
                        entry.getValue().size(),
                        rounded(entry.getValue().stream()
                                .mapToDouble(VerifiedValue::deviation)
                                .max()
                                .orElseThrow())))
                .toList();
    }

    private static List<Section> sections(VerificationReply report, List<VerifiedValue> values, boolean details) {
        List<Section> sections = new ArrayList<>();
        if (!report.passed()) {
            List<VerifiedValue> failed = values.stream()
                    .filter(value -> value.outcome() == VerifiedOutcome.UNEXPECTED)
                    .toList();
            sections.add(new Section("unexpected", "Not as published", lines(failed)));
        }
        if (details) {
            report.sources()
                    .forEach(source -> sections.add(new Section(
                            "values-" + source.source(),
                            source.source() + ": " + source.citation(),
                            lines(source.values()))));
        }
        return sections;
    }

    private static List<ValueLine> lines(List<VerifiedValue> values) {
        return values.stream().map(VerificationPage::line).toList();
    }

    private static ValueLine line(VerifiedValue value) {
        boolean there = value.calculated() != null;
        int digits = new BigDecimal(value.printed()).precision() + 2;
        return new ValueLine(
                value.request(),
                List.of(
                        value.quantity(),
                        value.place() + " (" + value.id() + ")",
                        value.origin(),
                        value.printed(),
                        there ? digits(value.calculated(), digits) : NONE,
                        value.unit(),
                        there ? digits(value.difference(), 2) : NONE,
                        there ? rounded(value.deviation()) : NONE,
                        outcome(value.outcome()),
                        value.reason() == null ? "" : value.reason()),
                value.outcome() == VerifiedOutcome.UNEXPECTED);
    }

    private static String outcome(VerifiedOutcome outcome) {
        return switch (outcome) {
            case MET -> "met";
            case KNOWN_DEVIATION -> "known deviation";
            case UNEXPECTED -> "UNEXPECTED";
        };
    }

    private static String digits(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits)).toString();
    }

    private static String rounded(Double value) {
        return value == null
                ? NONE
                : new BigDecimal(value).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
