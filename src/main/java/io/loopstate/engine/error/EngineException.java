package io.loopstate.engine.error;

import java.util.List;
import java.util.Optional;

/**
 * A calculation that has no answer, with what is needed to explain it in the caller's own units.
 *
 * <p>Numbers are SI; {@code got}, {@code lower} and {@code upper} are NaN where they do not apply.
 */
public final class EngineException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** One of several states that satisfy the inputs: phase name, K, Pa, kg/m3. */
    public record Candidate(String phase, double temperature, double pressure, double density) {}

    private final ErrorCode code;
    private final transient Variable variable;
    private final double got;
    private final double lower;
    private final double upper;
    private final transient List<Candidate> candidates;
    private final String input;
    private final boolean gap;

    private EngineException(
            ErrorCode code,
            String message,
            Variable variable,
            double got,
            double lower,
            double upper,
            List<Candidate> candidates,
            String input,
            boolean gap,
            Throwable cause) {
        super(message, cause);
        this.code = code;
        this.variable = variable;
        this.got = got;
        this.lower = lower;
        this.upper = upper;
        this.candidates = List.copyOf(candidates);
        this.input = input;
        this.gap = gap;
    }

    /** An error about no single variable. */
    public static EngineException of(ErrorCode code, String message) {
        return new EngineException(
                code, message, null, Double.NaN, Double.NaN, Double.NaN, List.of(), null, false, null);
    }

    /** An error about one variable: what was got and the closed range allowed (NaN for an open end). */
    public static EngineException of(
            ErrorCode code, String message, Variable variable, double got, double lower, double upper) {
        return new EngineException(code, message, variable, got, lower, upper, List.of(), null, false, null);
    }

    /** States inside the range that are not computed: OUT_OF_RANGE. */
    public static EngineException notComputed(String message) {
        return notComputed(message, null, Double.NaN, Double.NaN, Double.NaN);
    }

    /**
     * States inside the range that are not computed, by the variable where they begin, as {@link #of(ErrorCode, String, Variable,
     * double, double, double)} says it: OUT_OF_RANGE.
     */
    public static EngineException notComputed(
            String message, Variable variable, double got, double lower, double upper) {
        return new EngineException(
                ErrorCode.OUT_OF_RANGE, message, variable, got, lower, upper, List.of(), null, true, null);
    }

    /** Several states, or none in the phase asked for. */
    public static EngineException of(ErrorCode code, String message, List<Candidate> candidates) {
        return new EngineException(
                code, message, null, Double.NaN, Double.NaN, Double.NaN, candidates, null, false, null);
    }

    /** An error about a named input that is no variable of state: what was got and the closed range allowed. */
    public static EngineException of(
            ErrorCode code, String message, String input, double got, double lower, double upper) {
        return new EngineException(code, message, null, got, lower, upper, List.of(), input, false, null);
    }

    /** The same error, traced to the input of a calculation that led to it, by the input's name, e.g. {@code condensing}. */
    public EngineException about(String input) {
        return new EngineException(code, getMessage(), variable, got, lower, upper, candidates, input, gap, this);
    }

    public ErrorCode code() {
        return code;
    }

    /** The variable at fault, empty where the error is about the inputs as a whole. */
    public Optional<Variable> variable() {
        return Optional.ofNullable(variable);
    }

    /** Name of the input at fault, empty where the calculation did not trace it. */
    public Optional<String> input() {
        return Optional.ofNullable(input);
    }

    /** Whether what was asked for lies inside the range, where the model's states are not computed. */
    public boolean isGap() {
        return gap || code == ErrorCode.TWO_PHASE_UNDEFINED;
    }

    public double got() {
        return got;
    }

    public double lower() {
        return lower;
    }

    public double upper() {
        return upper;
    }

    /** States that satisfy the inputs, empty unless the code speaks of them. */
    public List<Candidate> candidates() {
        return candidates;
    }
}
