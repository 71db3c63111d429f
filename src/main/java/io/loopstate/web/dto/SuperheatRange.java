package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Superheats that a table steps over. */
@Schema(description = "Superheats that a table steps over.")
public record SuperheatRange(
        @Schema(ref = "TemperatureDifference", description = "First value, 0 or more.")
        Quantity from,

        @Schema(ref = "TemperatureDifference", description = "Last value, met where the step allows.")
        Quantity to,

        @Schema(ref = "TemperatureDifference", description = "Above 0; at most 500 rows.")
        Quantity step) {}
