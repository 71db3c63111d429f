package io.loopstate.web.verification;

import io.loopstate.web.dto.VerificationGap;
import io.loopstate.web.dto.VerificationReply;
import io.loopstate.web.dto.VerificationTotals;
import io.loopstate.web.dto.VerifiedOutcome;
import io.loopstate.web.dto.VerifiedSource;
import io.loopstate.web.dto.VerifiedValue;
import io.loopstate.web.verify.Answers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Predicate;

/** Recomputes published values. */
public final class Verification {
    private final Answers answers;
    private final String engineVersion;
    private final PublishedValues published;

    /** The bundled values, by these answers. */
    public Verification(Answers answers, String engineVersion) {
        this(answers, engineVersion, PublishedValues.bundled());
    }

    Verification(Answers answers, String engineVersion, PublishedValues published) {
        this.answers = answers;
        this.engineVersion = engineVersion;
        this.published = published;
    }

    /** The short names of the sources whose values are compared, in the order of the report. */
    public List<String> sources() {
        return published.rows().stream().map(PublishedRow::source).distinct().toList();
    }

    /**
     * Values, computed now.
     *
     * @param only the one source; all if empty
     * @param details whether single values are told
     */
    public VerificationReply report(Optional<String> only, boolean details) {
        Map<String, List<VerifiedValue>> bySource = new LinkedHashMap<>();
        Map<String, TreeSet<String>> topics = new LinkedHashMap<>();
        published.rows().stream()
                .filter(row -> only.map(row.source()::equals).orElse(true))
                .forEach(row -> {
                    bySource.computeIfAbsent(row.source(), key -> new ArrayList<>())
                            .addAll(Comparison.of(row, answers));
                    topics.computeIfAbsent(row.source(), key -> new TreeSet<>()).add(row.topic());
                });
        List<VerifiedSource> sources = bySource.entrySet().stream()
                .map(entry ->
                        source(entry.getKey(), List.copyOf(topics.get(entry.getKey())), entry.getValue(), details))
                .toList();
        VerificationTotals totals =
                totals(bySource.values().stream().flatMap(List::stream).toList());
        return new VerificationReply(totals.unexpected() == 0, totals, sources, gaps(only), engineVersion);
    }

    private List<VerificationGap> gaps(Optional<String> only) {
        return published.leftOut().stream()
                .filter(gap -> only.map(gap.source()::equals).orElse(true))
                .map(gap -> new VerificationGap(
                        gap.source(),
                        published.sources().get(gap.source()).citation(),
                        gap.place(),
                        gap.rows(),
                        gap.values(),
                        gap.reason()))
                .toList();
    }

    private VerifiedSource source(String key, List<String> topics, List<VerifiedValue> values, boolean details) {
        PublishedValues.PublishedSource source = published.sources().get(key);
        return new VerifiedSource(
                key, source.citation(), source.doi().orElse(null), topics, totals(values), details ? values : null);
    }

    private static VerificationTotals totals(List<VerifiedValue> values) {
        return new VerificationTotals(
                values.size(),
                count(values, value -> value.outcome() == VerifiedOutcome.MET),
                count(values, value -> value.outcome() == VerifiedOutcome.KNOWN_DEVIATION),
                count(values, value -> value.outcome() == VerifiedOutcome.UNEXPECTED),
                worst(values, value -> value.outcome() != VerifiedOutcome.KNOWN_DEVIATION),
                worst(values, value -> value.outcome() == VerifiedOutcome.KNOWN_DEVIATION),
                count(values, value -> value.origin().equals("read")),
                count(values, value -> value.origin().equals("memory")),
                count(values, value -> value.origin().equals("derived")));
    }

    private static int count(List<VerifiedValue> values, Predicate<VerifiedValue> which) {
        return (int) values.stream().filter(which).count();
    }

    private static Double worst(List<VerifiedValue> values, Predicate<VerifiedValue> which) {
        OptionalDouble worst = values.stream()
                .filter(which)
                .filter(value -> value.deviation() != null)
                .mapToDouble(VerifiedValue::deviation)
                .max();
        return worst.isPresent() ? worst.getAsDouble() : null;
    }
}
