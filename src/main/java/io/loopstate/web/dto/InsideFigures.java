package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Inside the cylinder or between the rotors. */
@Schema(description = "Inside the cylinder or between the rotors.")
public record InsideFigures(
        @Schema(required = true, ref = "Pressure", description = "At the start of compression.")
        Quantity startPressure,

        @Schema(required = true, ref = "Pressure", description = "Where compression inside ends.")
        Quantity endPressure,

        @Schema(required = true, ref = "Temperature", description = "There.")
        Quantity endTemperature,

        @Schema(description = "1 + C - C v4/v3 of a reciprocating compressor.")
        Double clearanceEfficiency,

        @Schema(description = "Volume of the clearance vapor after over before re-expansion.")
        Double reexpansionRatio,

        @Schema(
                ref = "Power",
                description = "Lost because compression inside ends above or below the discharge pressure.")
        Quantity mismatchPower,

        @Schema(required = true, ref = "Power", description = "Given off by a cooled cylinder.")
        Quantity coolingHeat) {}
