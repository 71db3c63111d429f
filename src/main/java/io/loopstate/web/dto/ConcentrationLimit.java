package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A limit of the concentration of refrigerant in air. */
@Schema(description = "A limit of the concentration of refrigerant in air.")
public record ConcentrationLimit(
        @Schema(required = true, ref = "Density", description = "Mass of refrigerant in the volume of air.")
        Quantity massConcentration,

        @Schema(description = "Volume of refrigerant in the volume of air, m3/m3; absent where it is not on file.")
        Double volumeFraction,

        @Schema(required = true, description = "Where the value stands, and whether it was remembered.")
        String source) {}
