package io.loopstate.engine.cycle;

import io.loopstate.engine.error.EngineException;
import java.util.function.Supplier;

/** Traces errors of the engine's lower layers to the input that led there. */
public final class Inputs {
    private Inputs() {}

    /** The value of a calculation; an error that names no input yet is traced to the one given. */
    public static <T> T trace(String input, Supplier<T> calculation) {
        try {
            return calculation.get();
        } catch (EngineException exception) {
            throw exception.input().isPresent() ? exception : exception.about(input);
        }
    }
}
