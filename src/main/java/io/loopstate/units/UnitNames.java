package io.loopstate.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds units by what people write. Canonical names and listed spellings are looked up as they are; other cases,
 * separators and orders of factors go through two further maps, built when the first such spelling arrives.
 */
final class UnitNames {
    private static final List<Ending> ENDINGS = List.of(
            new Ending("gauge", PressureReference.GAUGE),
            new Ending("gage", PressureReference.GAUGE),
            new Ending("g", PressureReference.GAUGE),
            new Ending("absolute", PressureReference.ABSOLUTE),
            new Ending("abs", PressureReference.ABSOLUTE),
            new Ending("a", PressureReference.ABSOLUTE),
            new Ending("vacuum", PressureReference.VACUUM),
            new Ending("vac", PressureReference.VACUUM),
            new Ending("differential", PressureReference.DIFFERENCE),
            new Ending("diff", PressureReference.DIFFERENCE),
            new Ending("d", PressureReference.DIFFERENCE));

    private final Map<String, Match> exact;
    private final Map<String, String> refusals;
    private volatile Loose loose;

    /**
     * The units of one spelling, at most one per kind, or a whole family of pressures.
     *
     * @param units the units
     * @param bare whether this is a pressure that does not say what it is counted from
     */
    record Match(List<UnitToken> units, boolean bare) {}

    private record Ending(String text, PressureReference reference) {}

    private record Loose(Map<String, Match> folded, Map<String, Match> products, Map<String, String> refused) {}

    UnitNames(Map<String, String> refusals) {
        this.exact = new HashMap<>(2048);
        this.refusals = refusals;
    }

    void add(List<UnitToken> family, UnitTable.Row row) {
        for (UnitToken unit : family) {
            merge(exact, unit.name(), new Match(List.of(unit), false));
        }
        Match match = new Match(List.copyOf(family), row.needsReference());
        for (String spelling : row.bareSpellings()) {
            merge(exact, Spelling.normalize(spelling), match);
        }
    }

    private static void merge(Map<String, Match> map, String key, Match added) {
        Match known = map.putIfAbsent(key, added);
        if (known == null || known == added) {
            return;
        }
        List<UnitToken> all = new ArrayList<>(known.units());
        for (UnitToken unit : added.units()) {
            if (!all.contains(unit)) {
                requireOtherKind(key, all, unit);
                all.add(unit);
            }
        }
        map.put(key, new Match(List.copyOf(all), known.bare() || added.bare()));
    }

    private static void requireOtherKind(String key, List<UnitToken> known, UnitToken unit) {
        for (UnitToken other : known) {
            if (other.measures(unit.kind())) {
                throw new IllegalStateException("\"" + key + "\" is both " + other + " and " + unit);
            }
        }
    }

    /** The units of a normalized spelling: as written, else with other letters' case, separators or order. */
    Optional<Match> find(String normalized) {
        Match match = exact.get(normalized);
        if (match != null) {
            return Optional.of(match);
        }
        String folded = Spelling.fold(normalized);
        match = loose().folded().get(folded);
        if (match == null) {
            match = pressure(folded);
        }
        if (match == null && Product.is(normalized)) {
            match = loose().products().get(Product.key(normalized));
        }
        return Optional.ofNullable(match);
    }

    /** A pressure unit with a word of what it is counted from: {@code psi(g)}, {@code bar abs}, {@code delta kPa}. */
    private Match pressure(String folded) {
        for (Ending ending : ENDINGS) {
            if (folded.endsWith(ending.text())) {
                String unit =
                        folded.substring(0, folded.length() - ending.text().length());
                Match match = ofFamily(unit, ending.reference());
                if (match != null) {
                    return match;
                }
            }
        }
        String undifferenced = folded.startsWith("δ") ? folded.substring(1) : folded;
        undifferenced = folded.startsWith("delta") ? folded.substring("delta".length()) : undifferenced;
        return undifferenced.equals(folded) ? null : ofFamily(undifferenced, PressureReference.DIFFERENCE);
    }

    private Match ofFamily(String folded, PressureReference reference) {
        Match family = loose().folded().get(folded);
        if (family != null && family.bare()) {
            for (UnitToken unit : family.units()) {
                if (unit.reference() == reference) {
                    return new Match(List.of(unit), false);
                }
            }
        }
        return null;
    }

    /** Why a normalized spelling is refused although people use it. */
    Optional<String> refusal(String normalized) {
        return exact.containsKey(normalized)
                ? Optional.empty()
                : Optional.ofNullable(loose().refused().get(Spelling.fold(normalized)));
    }

    private Loose loose() {
        Loose built = loose;
        if (built == null) {
            // Two threads may both build it; the results are equal.
            built = new Loose(new HashMap<>(2048), new HashMap<>(512), new HashMap<>());
            for (Map.Entry<String, Match> spelling : exact.entrySet()) {
                merge(built.folded(), Spelling.fold(spelling.getKey()), spelling.getValue());
                if (Product.is(spelling.getKey())) {
                    merge(built.products(), Product.key(spelling.getKey()), spelling.getValue());
                }
            }
            for (Map.Entry<String, String> refusal : refusals.entrySet()) {
                built.refused().put(Spelling.fold(Spelling.normalize(refusal.getKey())), refusal.getValue());
            }
            loose = built;
        }
        return built;
    }
}
