package io.loopstate.engine.error;

/**
 * A calculation was cancelled because its time was up. It is no {@link EngineException}, so that nothing in the engine takes
 * it for a calculation that has no answer and goes another way.
 */
public final class DeadlineException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Without a stack trace: where the calculation stood says nothing about what was wrong. */
    public DeadlineException() {
        super("the time for this calculation is up", null, false, false);
    }
}
