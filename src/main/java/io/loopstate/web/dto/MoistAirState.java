package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Moist air with every number; what is specific counts per mass of dry air. */
@Schema(description = "Moist air. What is specific counts per mass of dry air.")
public record MoistAirState(
        @Schema(required = true, ref = "Pressure", description = "Of the mixture, absolute.")
        Quantity pressure,

        @Schema(required = true, ref = "Temperature") Quantity dryBulb,

        @Schema(required = true, ref = "Temperature", description = "Thermodynamic; below freezing of an iced wick.")
        Quantity wetBulb,

        @Schema(ref = "Temperature", description = "Below freezing the frost point; absent for dry air.")
        Quantity dewPoint,

        @Schema(required = true, description = "0 to 1.") Double relativeHumidity,

        @Schema(required = true, ref = "HumidityRatio") Quantity humidityRatio,

        @Schema(required = true, ref = "SpecificEnergy") Quantity specificEnthalpy,

        @Schema(required = true, ref = "SpecificVolume", description = "Of the mixture per mass of dry air.")
        Quantity specificVolume,

        @Schema(required = true, ref = "Density", description = "Of the mixture.")
        Quantity density,

        @Schema(required = true, ref = "SpecificEntropy", description = "Of the mixture per mass of dry air.")
        Quantity isobaricHeatCapacity,

        @Schema(required = true, ref = "Pressure", description = "Partial pressure, absolute.")
        Quantity vaporPressure,

        @Schema(required = true, ref = "Pressure", description = "Of water at the dry bulb, absolute.")
        Quantity saturationPressure,

        @Schema(required = true, description = "Humidity ratio over that of saturated air at the dry bulb.")
        Double degreeOfSaturation) {}
