package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The values of one source.
 *
 * @param source short name
 * @param citation in full
 * @param doi absent where there is none
 * @param topics what its values are about
 * @param totals of its values
 * @param values one by one; only where details were asked for
 */
@Schema(description = "The values of one source.")
public record VerifiedSource(
        @Schema(required = true, examples = "TRB1994") String source,
        @Schema(required = true) String citation,
        @Schema String doi,

        @Schema(required = true, description = "What its values are about.")
        List<String> topics,

        @Schema(required = true) VerificationTotals totals,

        @Schema(description = "One by one; where the source or details=true was asked for.")
        List<VerifiedValue> values) {}
