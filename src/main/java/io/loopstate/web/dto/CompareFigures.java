package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Displacement model against rating map. */
@Schema(description = "Displacement model against rating map.")
public record CompareFigures(
        @Schema(required = true, description = "Model over map, less 1.")
        double massFlowDifference,

        @Schema(required = true, description = "Model over map, less 1.")
        double powerDifference,

        @Schema(required = true, ref = "TemperatureDifference", description = "Model less map.")
        Quantity dischargeTemperatureDifference) {}
