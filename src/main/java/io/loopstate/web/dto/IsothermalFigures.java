package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Reversible compression at the suction's temperature. */
@Schema(description = "Reversible compression at the suction's temperature, the lower bound of all work.")
public record IsothermalFigures(
        @Schema(required = true, ref = "SpecificEnergy") Quantity work,

        @Schema(required = true, ref = "SpecificEnergy", description = "Given off.")
        Quantity heat,

        @Schema(required = true, description = "Isothermal over actual work.")
        double efficiency,

        @Schema(required = true, description = "Whether the fluid would be liquid at the end.")
        boolean condenses) {}
