package io.loopstate.engine.fluid;

import io.loopstate.engine.fluid.PairOrigin.Basis;
import java.util.List;

/** How well founded the model of a mixture is; follows from its pairs. */
public enum Accuracy {
    /** Every pair was fitted to measurements. */
    FITTED,
    /** Every pair has published parameters, but one or more were set by a combining rule. */
    ESTIMATED,
    /** One or more pairs have no published parameters: the result is a prediction of unknown quality. */
    PREDICTED;

    static Accuracy of(List<PairOrigin> pairs) {
        if (pairs.stream().anyMatch(p -> p.basis() == Basis.MISSING)) {
            return PREDICTED;
        }
        return pairs.stream().anyMatch(p -> p.basis() == Basis.ESTIMATED) ? ESTIMATED : FITTED;
    }
}
