package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Limits of a condensing coil; each member stands for a guideline of the engine of the same name. */
@Schema(
        name = "CoilLimits",
        description = "Limits that replace those of common practice when warnings about a condensing coil are given.")
public record CoilLimitsRequest(
        @Schema(
                ref = "TemperatureDifference",
                description = "Condensing midpoint over entering air. Default: 30 delta_degF.")
        Quantity maxCondensingOverAmbient,

        @Schema(
                ref = "TemperatureDifference",
                description = "Least distance of refrigerant and air. Default: 2 delta_degF.")
        Quantity minPinch,

        @Schema(description = "Condensing over critical pressure from which properties change steeply. Default: 0.9.")
        Double nearCriticalPressure,

        @Schema(description = "Measured over clean conductance. Default: 0.8.")
        Double minCleanliness,

        @Schema(ref = "Temperature", description = "Of the vapor that arrives. Default: 225 degF.")
        Quantity maxDischargeTemperature) {}
