package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Limits of the air of a coil; each member stands for a guideline of the engine of the same name. */
@Schema(
        name = "AirLimits",
        description = "Limits that replace those of common practice when warnings about the air of a coil are given.")
public record AirLimitsRequest(
        @Schema(
                ref = "TemperatureDifference",
                description = "Condensing temperature over entering air. Default: 30 delta_degF.")
        Quantity maxCondensingOverAmbient,

        @Schema(
                ref = "TemperatureDifference",
                description = "Entering air over evaporating temperature. Default: 35 delta_degF.")
        Quantity maxEvaporatorTemperatureDifference,

        @Schema(
                ref = "Temperature",
                description =
                        "Air entering from which an evaporator is a comfort coil that must not ice. Default: 60 degF.")
        Quantity comfortAirTemperature,

        @Schema(
                ref = "PressureDifference",
                description = "Fan power over airflow, which is a pressure. Default: 2.5 kPa_diff.")
        Quantity maxFanPressure,

        @Schema(ref = "VolumeFlow", description = "Of an evaporator for each ton of refrigeration. Default: 300 cfm.")
        Quantity minEvaporatorAirflow,

        @Schema(ref = "VolumeFlow", description = "Of an evaporator for each ton of refrigeration. Default: 500 cfm.")
        Quantity maxEvaporatorAirflow) {}
