package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** One stage. */
@Schema(description = "One stage.")
public record StageFigures(
        @Schema(required = true) FluidState inlet,

        @Schema(required = true) FluidState outlet,

        @Schema(required = true, description = "Absolute.") double pressureRatio,

        @Schema(required = true, ref = "SpecificEnergy") Quantity work,

        @Schema(required = true, ref = "SpecificEnergy", description = "Given off by a cooled cylinder.")
        Quantity heat,

        @Schema(ref = "Power") Quantity power) {}
