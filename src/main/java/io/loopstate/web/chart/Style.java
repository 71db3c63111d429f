package io.loopstate.web.chart;

/**
 * How a line and its symbols look. Any two that meet on one chart differ in dash, weight or symbol, so that they can be told
 * apart in black and white; the colors keep apart for color-blind readers and have a contrast of at least 4.5 to white.
 */
public enum Style {
    /** The edge of the dome. */
    BOUNDARY("#1c1c1c", 1.7, "", Symbol.NONE, true),
    ISOTHERM("#a1400b", 1, "8 3", Symbol.NONE, false),
    ISENTROPE("#00548a", 1, "2 3", Symbol.NONE, false),
    ISOBAR("#00624a", 1, "10 3 2 3", Symbol.NONE, false),
    QUALITY("#5a5a5a", 1.1, "1.5 3.5", Symbol.NONE, false),
    /** What is calculated, before the background. */
    PROCESS("#6b2470", 3.2, "", Symbol.DISC, true),
    /** What would be without loss. */
    IDEAL("#6b2470", 1.8, "6 4", Symbol.RING, true),
    /** A third way beside the two. */
    LIMIT("#8a3b12", 1.8, "2 3", Symbol.RING, true),
    FIRST("#00548a", 2.2, "", Symbol.DISC, true),
    SECOND("#a1400b", 2.2, "9 4", Symbol.SQUARE, true),
    THIRD("#00624a", 2.2, "2.5 3.5", Symbol.TRIANGLE, true),
    FOURTH("#6b2470", 2.2, "12 4 2.5 4", Symbol.DIAMOND, true),
    FIFTH("#1c1c1c", 1.2, "", Symbol.RING, true),
    /** Where something ends or is compared with. */
    REFERENCE("#1c1c1c", 1.2, "4 3", Symbol.NONE, false);

    /** What stands at a place. */
    enum Symbol {
        NONE,
        DISC,
        RING,
        SQUARE,
        TRIANGLE,
        DIAMOND
    }

    private final String color;
    private final double width;
    private final String dash;
    private final Symbol symbol;
    private final boolean strong;

    Style(String color, double width, String dash, Symbol symbol, boolean strong) {
        this.color = color;
        this.width = width;
        this.dash = dash;
        this.symbol = symbol;
        this.strong = strong;
    }

    String color() {
        return color;
    }

    double width() {
        return width;
    }

    /** Lengths of dashes and gaps, empty for none. */
    String dash() {
        return dash;
    }

    Symbol symbol() {
        return symbol;
    }

    /** Whether no text may stand on it. */
    boolean strong() {
        return strong;
    }
}
