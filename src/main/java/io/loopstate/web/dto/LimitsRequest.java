package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Limits that replace those of common practice when warnings are given. Each member stands for a guideline of the engine of
 * the same name.
 */
@Schema(
        name = "Limits",
        description =
                "Limits that replace those of common practice when warnings are given, for example the manufacturer's.")
public record LimitsRequest(
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
                description = "Air entering the evaporator over its midpoint temperature. Default: 35 delta_degF.")
        Quantity maxEvaporatorTemperatureDifference,

        @Schema(description = "Share by which two routes to the same heat may differ. Default: 0.1.")
        Double maxHeatBalanceDifference,

        @Schema(description = "Pressure over the critical one from which properties change steeply. Default: 0.9.")
        Double nearCriticalPressure,

        @Schema(description = "Default: 0.5.") Double minVolumetricEfficiency,

        @Schema(description = "Of a measured compression. Default: 0.4.")
        Double minIsentropicEfficiency,

        @Schema(description = "Heat rejected over heat taken up, usual lower end. Default: 1.05.")
        Double minHeatRejectionFactor,

        @Schema(description = "Heat rejected over heat taken up, usual upper end. Default: 1.75.")
        Double maxHeatRejectionFactor,

        @Schema(
                description = "Power lost to a built-in volume ratio that does not fit, as a share of the isentropic "
                        + "power. Default: 0.05.")
        Double maxBuiltInMismatch,

        @Schema(description = "Flow of a centrifugal compressor over its least flow. Default: 1.1.")
        Double minSurgeMargin,

        @Schema(description = "Share by which a rating map and a displacement model may differ. Default: 0.1.")
        Double maxModelDifference) {}
