package io.loopstate.engine.fluid;

import java.util.List;

/** A composition that is no mixture this engine computes, with what is needed to say why. */
public final class CompositionException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What is wrong. */
    public enum Reason {
        /** The notation cannot be read. */
        NOT_READABLE,
        /** A component that nobody knows. */
        UNKNOWN_COMPONENT,
        /** A component that is a mixture itself. */
        NOT_PURE,
        /** One component twice. */
        REPEATED_COMPONENT,
        /** Fewer than two components or too many. */
        NUMBER_OF_COMPONENTS,
        /** A share that is zero, negative or no number, or more than the whole. */
        SHARE_NOT_POSITIVE,
        /** A share so small that it is below what the model resolves. */
        SHARE_TOO_SMALL,
        /** Shares that do not add up to the whole. */
        SUM_OF_SHARES,
        /** A pair that was not fitted to measurements where only such are wanted. */
        PAIR_NOT_FITTED
    }

    private final Reason reason;
    private final String got;
    private final String allowed;
    private final transient List<String> suggestions;

    CompositionException(Reason reason, String message, String got, String allowed, List<String> suggestions) {
        super(message);
        this.reason = reason;
        this.got = got;
        this.allowed = allowed;
        this.suggestions = List.copyOf(suggestions);
    }

    public Reason reason() {
        return reason;
    }

    /** What was got, in words. */
    public String got() {
        return got;
    }

    /** What is allowed, in words. */
    public String allowed() {
        return allowed;
    }

    /** Designations spelled like an unknown component, the nearest first. */
    public List<String> suggestions() {
        return suggestions;
    }
}
