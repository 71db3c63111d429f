package io.loopstate.web.verify;

/** Which characters a report can hold in every one of its forms. */
final class Characters {
    private static final int REPLACEMENT = 0xFFFD;

    private Characters() {}

    /** Whether a text holds no control character, half a pair or character without meaning. */
    static boolean printable(String text) {
        return text.codePoints().allMatch(Characters::printable);
    }

    /** The text with a replacement for each character that is not printable. */
    static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(point -> clean.appendCodePoint(printable(point) ? point : REPLACEMENT));
        return clean.toString();
    }

    // What Unicode has no character for is not allowed in XML 1.0 either, or ends a line somewhere.
    private static boolean printable(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                false;
            default -> (point & 0xFFFE) != 0xFFFE;
        };
    }
}
