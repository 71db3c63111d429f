package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What became of one expectation.
 *
 * @param pointer place in the reply, as in the case
 * @param passed whether it was met
 * @param expected the number expected
 * @param actual the number of the reply, in the same unit
 * @param difference actual less expected, in a unit of differences
 * @param tolerance largest difference that passes
 * @param expectedText the text or truth value expected
 * @param actualText the text or truth value of the reply
 * @param message why it was not met, where the numbers do not tell
 */
@Schema(description = "What became of one expectation. Plain numbers have the unit ratio.")
public record VerifyValueReport(
        @Schema(required = true) String pointer,
        @Schema(required = true) boolean passed,

        @Schema(ref = "AnyQuantity") Quantity expected,

        @Schema(ref = "AnyQuantity", description = "In the unit of the number expected.")
        Quantity actual,

        @Schema(ref = "AnyQuantity", description = "Actual less expected.")
        Quantity difference,

        @Schema(ref = "AnyQuantity", description = "The larger of the absolute and the relative tolerance.")
        Quantity tolerance,

        @Schema(description = "The text or truth value expected.")
        String expectedText,

        @Schema(description = "The text or truth value of the reply.")
        String actualText,

        @Schema(description = "Why it was not met, where the numbers do not tell.")
        String message) {}
