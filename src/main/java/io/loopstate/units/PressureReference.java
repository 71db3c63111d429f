package io.loopstate.units;

/** What a unit's numbers are counted from. It matters for pressures; every other unit has {@link #NONE}. */
public enum PressureReference {
    /** Counted from perfect vacuum. */
    ABSOLUTE("absolute"),
    /** Counted up from the surrounding atmosphere. */
    GAUGE("gauge"),
    /** Counted down from the surrounding atmosphere. */
    VACUUM("vacuum"),
    /** The distance of two pressures. */
    DIFFERENCE("difference"),
    /** Not a pressure. */
    NONE("");

    private final String words;

    PressureReference(String words) {
        this.words = words;
    }

    /** The word for it, empty for {@link #NONE}. */
    public String words() {
        return words;
    }

    /** From the ending of a token: {@code psig}, {@code bar_a}, {@code inHg_vac}, {@code kPa_diff}. */
    static PressureReference ofToken(String token) {
        if (token.endsWith("_diff")) {
            return DIFFERENCE;
        }
        if (token.endsWith("_vac")) {
            return VACUUM;
        }
        if (token.endsWith("g")) {
            return GAUGE;
        }
        if (token.endsWith("a")) {
            return ABSOLUTE;
        }
        throw new IllegalStateException("pressure unit without reference: " + token);
    }
}
