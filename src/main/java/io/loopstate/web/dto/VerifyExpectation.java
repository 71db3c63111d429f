package io.loopstate.web.dto;

import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A value that is expected at a place of a reply. A number passes if |actual - value| is at most the larger of the absolute
 * tolerance and the relative tolerance times |value|.
 *
 * @param pointer place in the reply
 * @param value a number
 * @param unit of the number
 * @param absoluteTolerance largest difference
 * @param toleranceUnit of the absolute tolerance
 * @param relativeTolerance largest difference over the expected value
 * @param text a text or a name out of a list
 * @param flag a truth value
 */
@Schema(
        description =
                "A value that is expected at a place of a reply: one of value, text and flag. A number passes if |actual - "
                        + "value| <= max(absoluteTolerance, relativeTolerance |value|), all in its unit; value is the reference. "
                        + "A number needs at least one of the tolerances.")
public record VerifyExpectation(
        @NotNull
        @Schema(description = "Place in the reply, RFC 6901; a quantity is meant as a whole.", examples = "/superheat")
        String pointer,

        @Schema(description = "The number expected. Text and truth values are understood here too.", examples = "9.4")
        Double value,

        @Schema(
                description =
                        "Unit of value, to which the reply is converted; gauge pressures count from the atmosphere of the "
                                + "case. Left out for plain numbers.",
                examples = "K")
        String unit,

        @Schema(
                description =
                        "Largest difference, 0 or more, in toleranceUnit; text such as \"1 delta_degF\" is understood "
                                + "too.",
                minimum = "0",
                examples = "0.2")
        Double absoluteTolerance,

        @Schema(
                description =
                        "Unit of absoluteTolerance, a difference: delta_degF, K, psi_diff. Default: steps of unit, but for "
                                + "degC and degF, where it has to be named.",
                examples = "delta_degF")
        String toleranceUnit,

        @Schema(
                description =
                        "Largest difference over the value expected, 0 or more; refused for temperatures, whose zero "
                                + "is a matter of the scale.",
                minimum = "0",
                examples = "0.005")
        Double relativeTolerance,

        @Schema(description = "The text expected, by equality.", examples = "vapor")
        String text,

        @Schema(description = "The truth value expected.") Boolean flag) {}
