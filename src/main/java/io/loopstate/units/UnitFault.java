package io.loopstate.units;

/**
 * A quantity that cannot be taken as given: what is wrong, what was got, what is allowed and what to do about it. Plain
 * strings, free of any transport; a text that does not apply is empty.
 */
public final class UnitFault extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int CLIP = 40;

    private final UnitFaultCode code;
    private final String got;
    private final String allowed;
    private final String hint;

    private UnitFault(UnitFaultCode code, String message, String got, String allowed, String hint) {
        // A fault is an answer to the caller and not a failure of the program: no stack trace to pay for.
        super(message, null, false, false);
        this.code = code;
        this.got = clip(got);
        this.allowed = allowed;
        this.hint = hint;
    }

    static UnitFault of(UnitFaultCode code, String message, String got, String allowed, String hint) {
        return new UnitFault(code, message, got, allowed, hint);
    }

    /** The stable code. */
    public UnitFaultCode code() {
        return code;
    }

    /** What was given, shortened and without control characters. */
    public String got() {
        return got;
    }

    /** What would be accepted, empty if that cannot be said shortly. */
    public String allowed() {
        return allowed;
    }

    /** What to do about it, empty if there is nothing to add. */
    public String hint() {
        return hint;
    }

    /** Foreign text made fit for a message: at most 40 characters, none of them a control character or half a pair. */
    static String clip(String text) {
        StringBuilder clean = new StringBuilder(CLIP + 1);
        int i = 0;
        while (i < text.length() && clean.length() < CLIP) {
            int character = text.codePointAt(i);
            i += Character.charCount(character);
            int type = Character.getType(character);
            boolean printable = type != Character.CONTROL && type != Character.SURROGATE && type != Character.FORMAT;
            clean.appendCodePoint(printable ? character : ' ');
        }
        return i < text.length() ? clean.append('…').toString() : clean.toString();
    }
}
