package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A number in a step of the working.
 *
 * @param symbol as the formula writes it
 * @param quantity the number with its unit; a plain number has the unit {@code ratio}
 */
@Schema(description = "A number in a step of the working.")
public record WorkingTerm(
        @Schema(required = true, description = "As the formula writes it.", examples = "h2s")
        String symbol,

        @Schema(required = true, ref = "AnyQuantity") Quantity quantity) {}
