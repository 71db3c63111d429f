package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Counts of a report.
 *
 * @param cases all of them
 * @param casesPassed those that passed
 * @param expectations all of them
 * @param expectationsPassed those that passed
 * @param warnings of all replies; a warning fails no case
 */
@Schema(description = "Counts of a report.")
public record VerifyTotals(
        @Schema(required = true) int cases,
        @Schema(required = true) int casesPassed,
        @Schema(required = true) int expectations,
        @Schema(required = true) int expectationsPassed,

        @Schema(required = true, description = "Warnings of all replies; a warning fails no case.")
        int warnings) {}
