package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * One step of the working.
 *
 * @param name what is computed, in words
 * @param formula ASCII
 * @param inputs the numbers put in, in the order of the formula
 * @param result what comes out
 * @param source where the formula comes from
 */
@Schema(description = "One step of the working: formula, numbers put in, result, source.")
public record WorkingStep(
        @Schema(required = true, description = "What is computed, in words.")
        String name,

        @Schema(required = true, description = "The formula, in ASCII.", examples = "h2 = h1 + (h2s - h1) / eta")
        String formula,

        @Schema(required = true) List<WorkingTerm> inputs,

        @Schema(required = true) WorkingTerm result,

        @Schema(required = true, description = "Where the formula or the value comes from.")
        String source) {}
