package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What-if less base case. */
@Schema(name = "WhatIfDifferences", description = "What-if less base case.")
public record WhatIfDifferences(
        @Schema(required = true, ref = "TemperatureDifference", description = "Of the evaporating midpoint.")
        Quantity evaporatingTemperature,

        @Schema(required = true, ref = "TemperatureDifference", description = "Of the condensing midpoint.")
        Quantity condensingTemperature,

        @Schema(required = true, ref = "PressureDifference") Quantity evaporatingPressure,

        @Schema(required = true, ref = "PressureDifference") Quantity condensingPressure,

        @Schema(required = true, ref = "TemperatureDifference")
        Quantity dischargeTemperature,

        @Schema(required = true, ref = "Power") Quantity refrigeratingCapacity,

        @Schema(required = true, ref = "Power") Quantity electricalPower,

        @Schema(required = true, description = "Capacity over that of the base case, less 1.")
        double relativeCapacity,

        @Schema(required = true, description = "Electrical power over that of the base case, less 1.")
        double relativePower,

        @Schema(required = true, description = "Flow of refrigerant over that of the base case, less 1.")
        double relativeMassFlow,

        @Schema(required = true, description = "Coefficient of performance over that of the base case, less 1.")
        double relativeCoefficientOfPerformance) {}
