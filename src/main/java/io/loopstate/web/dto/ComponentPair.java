package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Where the interaction of two components of a blend comes from.
 *
 * @param first designation of a component
 * @param second designation of the other
 * @param basis what the parameters rest on
 * @param rule the combining rule, absent for a fitted pair
 * @param source absent where nothing is published
 * @param note a known weakness, absent where none is known
 */
@Schema(description = "Where the interaction of two components of a blend comes from.")
public record ComponentPair(
        @Schema(required = true, examples = "R-32") String first,

        @Schema(required = true, examples = "R-125") String second,

        @Schema(required = true) PairBasis basis,

        @Schema(description = "The combining rule of a pair that was not fitted.", examples = "Lorentz-Berthelot")
        String rule,

        @Schema(description = "Of the parameters, where they are published.")
        Source source,

        @Schema(description = "A known weakness of the parameters.")
        String note) {}
