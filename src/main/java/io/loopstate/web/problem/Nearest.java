package io.loopstate.web.problem;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that was probably meant, so that a refusal can say so. */
public final class Nearest {
    // The cost grows with the square, and no known name is this long.
    private static final int LONGEST = 60;

    private Nearest() {}

    /**
     * The known name with the fewest edits (insert, delete, replace, swap; ignoring case), if there are at most two and fewer
     * than half the letters; the first of equals.
     */
    public static Optional<String> to(String name, Collection<String> known) {
        if (name.length() > LONGEST) {
            return Optional.empty();
        }
        String best = null;
        int fewest = Math.min(2, (name.length() - 1) / 2) + 1;
        for (String candidate : known) {
            int edits = edits(name.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (edits < fewest) {
                fewest = edits;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** A ready hint, or {@code null} if nothing is near enough. */
    public static String hint(String name, Collection<String> known) {
        return to(name, known).map(near -> "Did you mean " + near + "?").orElse(null);
    }

    /** Optimal string alignment distance: like Levenshtein's, and a swap of neighbors is one edit. */
    private static int edits(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : best(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int best(int[][] d, String a, String b, int i, int j) {
        int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int fewest = Math.min(replace, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(fewest, d[i - 2][j - 2] + 1) : fewest;
    }
}
