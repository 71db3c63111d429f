package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Limits of the water of a coil; each member stands for a guideline of the engine of the same name. */
@Schema(
        name = "WaterLimits",
        description = "Limits that replace those of common practice when warnings about the water of a coil are given.")
public record WaterLimitsRequest(
        @Schema(
                ref = "TemperatureDifference",
                description = "Between refrigerant and leaving water. Default: 2 delta_degF.")
        Quantity minWaterApproach,

        @Schema(
                ref = "TemperatureDifference",
                description = "Between refrigerant and leaving water. Default: 10 delta_degF.")
        Quantity maxWaterApproach,

        @Schema(
                ref = "TemperatureDifference",
                description = "Cold water of a tower over the wet bulb. Default: 5 delta_degF.")
        Quantity minTowerApproach,

        @Schema(ref = "Temperature", description = "Of water that leaves a chiller. Default: 40 degF.")
        Quantity minChilledWaterTemperature) {}
