package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Temperatures that a table steps over. */
@Schema(description = "Temperatures that a table steps over.")
public record TemperatureRange(
        @Schema(ref = "Temperature", description = "First value.")
        Quantity from,

        @Schema(ref = "Temperature", description = "Last value, met where the step allows.")
        Quantity to,

        @Schema(ref = "TemperatureDifference", description = "Above 0; at most 500 rows.")
        Quantity step) {}
