package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Limits of an evaporating coil; each member stands for a guideline of the engine of the same name. */
@Schema(
        name = "EvaporatingCoilLimits",
        description = "Limits that replace those of common practice when warnings about an evaporating coil are given.")
public record EvaporatingCoilLimitsRequest(
        @Schema(ref = "TemperatureDifference", description = "Least at the outlet. Default: 5 delta_degF.")
        Quantity minSuperheat,

        @Schema(ref = "TemperatureDifference", description = "Upper end of the usual. Default: 12 delta_degF.")
        Quantity maxEvaporatorSuperheat,

        @Schema(
                ref = "TemperatureDifference",
                description = "Entering air over the evaporating midpoint. Default: 35 delta_degF.")
        Quantity maxEvaporatorTemperatureDifference,

        @Schema(
                ref = "TemperatureDifference",
                description = "Least distance of refrigerant and air. Default: 2 delta_degF.")
        Quantity minPinch,

        @Schema(
                ref = "TemperatureDifference",
                description =
                        "Dew minus bubble temperature above which they must not be confused. Default: 5 delta_degF.")
        Quantity maxUnnoticedGlide,

        @Schema(description = "Measured over clean conductance. Default: 0.8.")
        Double minCleanliness,

        @Schema(
                ref = "Temperature",
                description = "Entering air from which this is a comfort coil that must not ice. Default: 60 degF.")
        Quantity comfortAirTemperature,

        @Schema(ref = "VolumeFlow", description = "Of a comfort coil for each ton of refrigeration. Default: 300 cfm.")
        Quantity minEvaporatorAirflow,

        @Schema(ref = "VolumeFlow", description = "Of a comfort coil for each ton of refrigeration. Default: 500 cfm.")
        Quantity maxEvaporatorAirflow) {}
