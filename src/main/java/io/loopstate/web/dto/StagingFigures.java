package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Two stages together. */
@Schema(description = "Two stages together.")
public record StagingFigures(
        @Schema(required = true, ref = "Pressure") Quantity intermediatePressure,

        @Schema(required = true, ref = "SpecificEnergy", description = "Of both stages.")
        Quantity work,

        @Schema(required = true, ref = "SpecificEnergy", description = "Given off between the stages.")
        Quantity intercoolerHeat,

        @Schema(required = true, ref = "SpecificEnergy", description = "Against one stage.")
        Quantity workSaved,

        @Schema(required = true, description = "Of the work of one stage.")
        double savedShare,

        @Schema(ref = "Power") Quantity power,

        @Schema(ref = "Power", description = "Heat given off between the stages.")
        Quantity intercoolerPower,

        @Schema(ref = "Power") Quantity powerSaved) {}
