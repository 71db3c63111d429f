package io.loopstate.units;

/** The character between the whole and the fractional part of a number. Digits are never grouped. */
public enum DecimalMark {
    /** {@code 41.5}. */
    POINT('.'),
    /** {@code 41,5}, for callers who have said so. */
    COMMA(',');

    private final char character;

    DecimalMark(char character) {
        this.character = character;
    }

    /** The mark itself. */
    public char character() {
        return character;
    }
}
