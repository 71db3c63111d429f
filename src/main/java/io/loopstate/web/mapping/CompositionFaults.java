package io.loopstate.web.mapping;

import io.loopstate.engine.fluid.CompositionException;
import io.loopstate.engine.fluid.CompositionException.Reason;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemKind;

/** Words what is wrong with the composition of a blend. */
final class CompositionFaults {
    private CompositionFaults() {}

    /** What cannot be read is told apart from what can be read and is no mixture; a new reason does not compile. */
    static ProblemKind kind(Reason reason) {
        return switch (reason) {
            case NOT_READABLE, UNKNOWN_COMPONENT, NOT_PURE, REPEATED_COMPONENT, NUMBER_OF_COMPONENTS ->
                ProblemKind.INVALID_REQUEST;
            case SHARE_NOT_POSITIVE, SHARE_TOO_SMALL, SUM_OF_SHARES -> ProblemKind.IMPOSSIBLE_INPUT;
            case PAIR_NOT_FITTED -> ProblemKind.OUT_OF_RANGE;
        };
    }

    private static String code(Reason reason) {
        return switch (reason) {
            case NOT_READABLE -> "composition-malformed";
            case UNKNOWN_COMPONENT -> "unknown-component";
            case NOT_PURE -> "component-not-pure";
            case REPEATED_COMPONENT -> "component-repeated";
            case NUMBER_OF_COMPONENTS -> "number-of-components";
            case SHARE_NOT_POSITIVE -> "share-not-positive";
            case SHARE_TOO_SMALL -> "share-too-small";
            case SUM_OF_SHARES -> "sum-of-shares";
            case PAIR_NOT_FITTED -> "pair-not-fitted";
        };
    }

    static Fault fault(Place place, CompositionException e) {
        return place.fault(code(e.reason()), Words.sentence(e.getMessage()))
                .withGot(e.got())
                .withAllowed(e.allowed())
                .withHint(hint(e));
    }

    private static String hint(CompositionException e) {
        if (e.reason() == Reason.PAIR_NOT_FITTED) {
            return "Leave out requireFitted to compute it nonetheless; the reply then says what the pairs rest on.";
        }
        return e.suggestions().isEmpty() ? null : "Did you mean " + String.join(" or ", e.suggestions()) + "?";
    }
}
