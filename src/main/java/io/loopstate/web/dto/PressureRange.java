package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Pressures that a table steps over. */
@Schema(description = "Pressures that a table steps over.")
public record PressureRange(
        @Schema(ref = "Pressure", description = "First value.")
        Quantity from,

        @Schema(ref = "Pressure", description = "Last value, met where the step allows.")
        Quantity to,

        @Schema(ref = "PressureDifference", description = "Above 0; at most 500 rows.")
        Quantity step) {}
