package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Limits of a machine in balance; each member stands for a guideline of the engine of the same name. */
@Schema(
        name = "BalanceLimits",
        description =
                "Limits that replace those of common practice when warnings about a machine in balance are given.")
public record BalanceLimitsRequest(
        @Schema(ref = "Temperature", description = "Default: 225 degF at the discharge line.")
        Quantity maxDischargeTemperature,

        @Schema(
                ref = "TemperatureDifference",
                description = "Least superheat at the compressor. Default: 5 delta_degF.")
        Quantity minSuperheat,

        @Schema(
                ref = "TemperatureDifference",
                description = "Usual upper end at the compressor. Default: 30 delta_degF.")
        Quantity maxSuperheat,

        @Schema(
                ref = "TemperatureDifference",
                description = "Usual upper end at the evaporator. Default: 12 delta_degF.")
        Quantity maxEvaporatorSuperheat,

        @Schema(ref = "TemperatureDifference", description = "Usual lower end. Default: 8 delta_degF.")
        Quantity minSubcooling,

        @Schema(ref = "TemperatureDifference", description = "Usual upper end. Default: 15 delta_degF.")
        Quantity maxSubcooling,

        @Schema(description = "Absolute discharge over suction pressure in one stage. Default: 10.")
        Double maxPressureRatio,

        @Schema(
                ref = "TemperatureDifference",
                description = "Condensing midpoint over outdoor air. Default: 30 delta_degF.")
        Quantity maxCondensingOverAmbient,

        @Schema(
                ref = "TemperatureDifference",
                description = "Indoor air over the evaporating midpoint. Default: 35 delta_degF.")
        Quantity maxEvaporatorTemperatureDifference,

        @Schema(
                ref = "TemperatureDifference",
                description = "Least distance of refrigerant and air in the condenser. Default: 2 delta_degF.")
        Quantity minPinch,

        @Schema(description = "Pressure over the critical one from which properties change steeply. Default: 0.9.")
        Double nearCriticalPressure,

        @Schema(
                ref = "Temperature",
                description =
                        "Indoor air from which the evaporator is a comfort coil that must not ice. Default: 60 degF.")
        Quantity comfortAirTemperature,

        @Schema(ref = "VolumeFlow", description = "Of a comfort coil for each ton of refrigeration. Default: 300 cfm.")
        Quantity minEvaporatorAirflow,

        @Schema(ref = "VolumeFlow", description = "Of a comfort coil for each ton of refrigeration. Default: 500 cfm.")
        Quantity maxEvaporatorAirflow,

        @Schema(description = "Default: 0.5.") Double minVolumetricEfficiency,

        @Schema(
                description = "Power lost to a built-in volume ratio that does not fit, as a share of the isentropic "
                        + "power. Default: 0.05.")
        Double maxBuiltInMismatch,

        @Schema(description = "Flow of a centrifugal compressor over its least flow. Default: 1.1.")
        Double minSurgeMargin) {}
