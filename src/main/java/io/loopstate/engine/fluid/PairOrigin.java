package io.loopstate.engine.fluid;

import java.util.Optional;

/**
 * Where the interaction of two components of a mixture comes from.
 *
 * @param first designation of a component
 * @param second designation of the other
 * @param basis what the parameters rest on
 * @param rule the combining rule where they were not fitted
 * @param source of the parameters, empty where there is none
 * @param note what is known of their weakness
 */
public record PairOrigin(
        String first,
        String second,
        Basis basis,
        Optional<String> rule,
        Optional<Citation> source,
        Optional<String> note) {

    /** What the parameters of a pair rest on. */
    public enum Basis {
        /** Fitted to measurements of this pair. */
        FITTED,
        /** Published, but set by a combining rule or by analogy. */
        ESTIMATED,
        /** Not published: the combining rule of Lorentz and Berthelot, all four parameters 1, of unknown quality. */
        MISSING
    }
}
