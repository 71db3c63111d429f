package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * One published value.
 *
 * @param id of its row
 * @param quantity name of its column
 * @param place in the source
 * @param origin read, memory or derived
 * @param request that gives it
 * @param pointer place in the reply
 * @param printed digit for digit
 * @param calculated here, in the unit of the print; absent where the request was refused
 * @param unit of the print
 * @param difference calculated less printed, in the unit of the print
 * @param deviation in half units of the last printed digit
 * @param knownDifference up to which size the difference is known; absent where the value has to round to the print
 * @param outcome whether it is met
 * @param reason why it is not
 */
@Schema(description = "One published value and the same value here.")
public record VerifiedValue(
        @Schema(required = true) String id,

        @Schema(required = true, description = "Name of its column.")
        String quantity,

        @Schema(required = true, description = "Place in the source.")
        String place,

        @Schema(required = true, description = "read, memory or derived.", examples = "read")
        String origin,

        @Schema(required = true, description = "The request that gives it, to be repeated by anyone.")
        String request,

        @Schema(required = true, description = "Place in the reply to that request.")
        String pointer,

        @Schema(required = true, description = "As printed, digit for digit.")
        String printed,

        @Schema(description = "The value here, in the unit of the print.")
        Double calculated,

        @Schema(required = true, description = "Unit of the print; values per mole are converted by the molar mass.")
        String unit,

        @Schema(description = "The value here less the printed one, in the unit of the print.")
        Double difference,

        @Schema(description = "Size of the difference in half units of the last printed digit.")
        Double deviation,

        @Schema(
                description =
                        "Up to which size a difference is known, in the unit of the print; beyond it the value is unexpected. "
                                + "Absent where the value has to round to the printed one.")
        Double knownDifference,

        @Schema(required = true) VerifiedOutcome outcome,

        @Schema(description = "Why it is not met.") String reason) {}
