package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Published values against this engine, computed for this very reply.
 *
 * @param passed whether every value rounds to the printed one or deviates as is known
 * @param totals of the sources in this reply
 * @param sources each with its own totals
 * @param leftOut published values that are on file and not compared
 * @param engineVersion version of the engine
 */
@Schema(
        description =
                "Published values against this engine, computed for this very reply. Deviations count in half units of the "
                        + "last printed digit: up to 1 the value here rounds to the printed one.")
public record VerificationReply(
        @Schema(required = true, description = "Whether every value rounds to the printed one or deviates as is known.")
        boolean passed,

        @Schema(required = true) VerificationTotals totals,
        @Schema(required = true) List<VerifiedSource> sources,

        @Schema(required = true, description = "Published values that are on file and not compared, with the reason.")
        List<VerificationGap> leftOut,

        @Schema(required = true, description = "Version of the engine.")
        String engineVersion) {}
