package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Counts, and the worst deviations in half units of the last printed digit.
 *
 * @param values all of them
 * @param met those that round to the printed one
 * @param knownDeviations those that do not, for a reason that is told
 * @param unexpected those that do not and should
 * @param worstDeviation of all but the known deviations; absent where there are none
 * @param worstKnownDeviation of the known deviations; absent where there are none
 * @param read copied from a text that was read
 * @param fromMemory recalled from the source, a weaker evidence
 * @param derived plain arithmetic from printed numbers
 */
@Schema(description = "Counts, and the worst deviations in half units of the last printed digit.")
public record VerificationTotals(
        @Schema(required = true) int values,

        @Schema(required = true, description = "Those that round to the printed value.")
        int met,

        @Schema(required = true, description = "Those that do not, for a reason that is told with each.")
        int knownDeviations,

        @Schema(required = true, description = "Those that do not and should.")
        int unexpected,

        @Schema(description = "Of all but the known deviations.")
        Double worstDeviation,

        @Schema(description = "Of the known deviations.") Double worstKnownDeviation,

        @Schema(required = true, description = "Copied from a text that was read.")
        int read,

        @Schema(required = true, description = "Recalled from the source: weaker evidence.")
        int fromMemory,

        @Schema(required = true, description = "Plain arithmetic from printed numbers.")
        int derived) {}
