package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Limits of a gas cooler; each member stands for a guideline of the engine of the same name. */
@Schema(
        name = "GasCoolerLimits",
        description = "Limits that replace those of common practice when warnings about a gas cooler are given.")
public record GasCoolerLimitsRequest(
        @Schema(
                ref = "TemperatureDifference",
                description = "Least distance of refrigerant and air. Default: 2 delta_degF.")
        Quantity minPinch,

        @Schema(
                description =
                        "As far above the critical pressure as this share lies below it properties change steeply. Default: 0.9.")
        Double nearCriticalPressure,

        @Schema(description = "Measured over clean conductance. Default: 0.8.")
        Double minCleanliness,

        @Schema(ref = "Temperature", description = "Of the gas that arrives. Default: 225 degF.")
        Quantity maxDischargeTemperature) {}
