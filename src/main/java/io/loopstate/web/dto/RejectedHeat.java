package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Heat given off in the condenser or gas cooler by what the refrigerant does there. */
@Schema(
        name = "HeatRejectionParts",
        description = "Heat given off in the condenser or gas cooler, per mass, by what the refrigerant does there.")
public record RejectedHeat(
        @Schema(required = true, ref = "SpecificEnergy", description = "Cooling of the vapor down to its dew point.")
        Quantity desuperheating,

        @Schema(required = true, ref = "SpecificEnergy") Quantity condensing,

        @Schema(required = true, ref = "SpecificEnergy", description = "Cooling of the liquid below its bubble point.")
        Quantity subcooling,

        @Schema(required = true, ref = "SpecificEnergy", description = "Cooling above the critical pressure.")
        Quantity gasCooling) {}
