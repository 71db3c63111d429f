package io.loopstate.web.problem;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import java.util.List;
import java.util.Locale;

/** What an error of the engine is to a client. */
public final class EngineProblems {
    private EngineProblems() {}

    /** The kind of problem for a code of the engine; a new code does not compile until it is placed here. */
    public static ProblemKind kind(ErrorCode code) {
        return switch (code) {
            case OUT_OF_RANGE, ABOVE_CRITICAL, REFERENCE_STATE_UNDEFINED, TWO_PHASE_UNDEFINED, NO_PHASE_BOUNDARY ->
                ProblemKind.OUT_OF_RANGE;
            case IMPOSSIBLE_VALUE, NO_SUCH_STATE, NOT_IN_PHASE, CONTRADICTORY_INPUTS, NO_BALANCE ->
                ProblemKind.IMPOSSIBLE_INPUT;
            case AMBIGUOUS_STATE, ON_SATURATION_LINE, PAIR_NOT_INDEPENDENT -> ProblemKind.AMBIGUOUS_INPUT;
            case NOT_CONVERGED -> ProblemKind.NOT_CONVERGED;
        };
    }

    /** The code of a fault that stems from a code of the engine, kebab case. */
    public static String faultCode(ErrorCode code) {
        return code.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * A problem whose numbers stay in SI, for an error that no mapping has placed in the request. Mappings know the
     * client's fields and units and word it better.
     */
    static Problem inSi(EngineException e) {
        String name = e.variable().map(Variable::words).orElse("");
        Fault fault = Fault.request(faultCode(e.code()), e.getMessage())
                .withGot(Double.isNaN(e.got()) ? null : (name + " = " + e.got() + " (SI)").strip())
                .withAllowed(range(e.lower(), e.upper()));
        return Problem.of(kind(e.code()), List.of(fault));
    }

    private static String range(double lower, double upper) {
        if (Double.isNaN(lower)) {
            return Double.isNaN(upper) ? null : "at most " + upper + " (SI)";
        }
        return Double.isNaN(upper) ? "at least " + lower + " (SI)" : lower + " to " + upper + " (SI)";
    }
}
