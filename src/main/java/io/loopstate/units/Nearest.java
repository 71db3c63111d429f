package io.loopstate.units;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The known names nearest to an unknown one, for suggestions. */
final class Nearest {
    private static final int SUGGESTIONS = 3;

    private Nearest() {}

    /** Up to three candidates within a third of the name's length (at least one edit), nearest first. */
    static List<String> to(String name, Collection<String> candidates) {
        String folded = name.toLowerCase(Locale.ROOT);
        int limit = Math.max(1, folded.length() / 3);
        record Scored(String candidate, int edits) {}
        return candidates.stream()
                .distinct()
                .filter(candidate -> Math.abs(candidate.length() - folded.length()) <= limit)
                .map(candidate -> new Scored(candidate, edits(folded, candidate.toLowerCase(Locale.ROOT))))
                .filter(scored -> scored.edits() <= limit)
                .sorted(Comparator.comparingInt(Scored::edits))
                .limit(SUGGESTIONS)
                .map(Scored::candidate)
                .toList();
    }

    /** "Did you mean …?", or nothing when there is nothing to suggest. */
    static String question(List<String> names) {
        return names.isEmpty() ? "" : "Did you mean " + either(names) + "?";
    }

    /** "a, b or c". */
    static String either(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : names.subList(0, last).stream().collect(Collectors.joining(", ")) + " or " + names.get(last);
    }

    /**
     * Insertions, deletions, substitutions and swaps of neighbors between two words (F. J. Damerau, Communications of
     * the ACM 7 (1964) 171, doi:10.1145/363958.363994), no letter edited twice.
     */
    static int edits(String a, String b) {
        int[] beforePrevious = new int[b.length() + 1];
        int[] previous = new int[b.length() + 1];
        Arrays.setAll(previous, j -> j);
        for (int i = 1; i <= a.length(); i++) {
            int[] current = new int[b.length() + 1];
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int substitution = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(substitution, 1 + Math.min(previous[j], current[j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    current[j] = Math.min(current[j], beforePrevious[j - 2] + 1);
                }
            }
            beforePrevious = previous;
            previous = current;
        }
        return previous[b.length()];
    }
}
