package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What was measured in the air of one coil. */
@Schema(name = "AirStream", description = "What was measured in the air of one coil; the air is taken as dry.")
public record AirRequest(
        @Schema(ref = "Temperature", description = "Dry bulb of the air entering the coil.")
        Quantity enteringTemperature,

        @Schema(ref = "Temperature", description = "Dry bulb of the air leaving the coil.")
        Quantity leavingTemperature,

        @Schema(
                ref = "VolumeFlow",
                description = "At the entering condition; needs the entering temperature. Give this or the mass flow.")
        Quantity volumeFlow,

        @Schema(ref = "MassFlow", description = "Dry air.") Quantity massFlow,

        @Schema(ref = "Power", description = "Heat exchanged with the air, sensible and latent, where it was measured.")
        Quantity totalHeat) {}
