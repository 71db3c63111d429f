package io.loopstate.units;

import java.util.List;

/** Spellings of a unit made comparable: look-alike characters, and the letters' case. */
final class Spelling {
    /** What a milli or mega may stand before; the case of its M is kept, for 1e9 lies between them. */
    private static final List<String> PREFIXED =
            List.of("bar", "wh", "hz", "w", "v", "a", "j", "n", "k", "m", "g", "l");

    private Spelling() {}

    /** Look-alike characters made one: spaces, minus signs, superscripts, micro signs, degree signs, quotes. */
    static String normalize(String text) {
        StringBuilder plain = null;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ' ' && c < 0x7F) {
                if (plain != null) {
                    plain.append(c);
                }
                continue;
            }
            if (plain == null) {
                plain = new StringBuilder(text.length() + 2).append(text, 0, i);
            }
            plain.append(plain(c));
        }
        return (plain == null ? text : plain.toString()).strip();
    }

    private static String plain(char c) {
        return switch (c) {
            case '\u2212', '\u2010', '\u2011', '\u2012', '\u2013', '\uFE63', '\uFF0D' -> "-";
            case '²' -> "2";
            case '³' -> "3";
            case '·', '\u22C5', '\u2219', '\u2022' -> ".";
            case '\u2206' -> "Δ";
            case '\u03BC' -> "µ";
            case 'º', '\u02DA' -> "°";
            case '\u2103' -> "°C";
            case '\u2109' -> "°F";
            case '\u212A' -> "K";
            case '\u2018', '\u2019', '\u2032' -> "'";
            case '\u201C', '\u201D', '\u2033' -> "\"";
            case '\uFF05' -> "%";
            case '\uFF0B' -> "+";
            case '\u200B', '\uFEFF', '\u200E', '\u200F' -> "";
            default -> Character.isSpaceChar(c) || Character.isWhitespace(c) ? " " : String.valueOf(c);
        };
    }

    /** Lower case, but for an M that may be a prefix, and without the separators that people set or leave out. */
    static String fold(String normalized) {
        StringBuilder folded = new StringBuilder(normalized.length());
        for (int i = 0; i < normalized.length(); i++) {
            if (!isLoose(normalized, i)) {
                folded.append(lower(normalized, i));
            }
        }
        return folded.toString();
    }

    /** Lower case, but for an M that may be a prefix. */
    static String lower(String text) {
        StringBuilder lower = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            lower.append(lower(text, i));
        }
        return lower.toString();
    }

    private static boolean isLoose(String text, int i) {
        return switch (text.charAt(i)) {
            case ' ', '_', '^', '(', ')', '-' -> true;
            // The full stop of an abbreviation, not that of a product.
            case '.' ->
                i + 1 == text.length() || !(Character.isLetterOrDigit(text.charAt(i + 1)) || text.charAt(i + 1) == '[');
            default -> false;
        };
    }

    private static char lower(String text, int i) {
        char c = text.charAt(i);
        return c == 'M' && isPrefix(text, i) ? c : Character.toLowerCase(c);
    }

    private static boolean isPrefix(String text, int i) {
        if (i > 0 && Character.isLetter(text.charAt(i - 1)) && text.charAt(i - 1) != 'Δ') {
            return false;
        }
        if (text.regionMatches(true, i + 1, "pa", 0, 2)) {
            return true;
        }
        for (String unit : PREFIXED) {
            int end = i + 1 + unit.length();
            if (text.regionMatches(true, i + 1, unit, 0, unit.length())
                    && (end == text.length() || !Character.isLetter(text.charAt(end)))) {
                return true;
            }
        }
        return false;
    }
}
