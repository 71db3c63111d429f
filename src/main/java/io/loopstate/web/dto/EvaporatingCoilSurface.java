package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The surface of the boiling zone of an evaporating coil. */
@Schema(name = "EvaporatingCoilSurface", description = "The surface of the boiling zone and what it does to the air.")
public record EvaporatingCoilSurface(
        @Schema(
                required = true,
                ref = "Temperature",
                description =
                        "Mean of the boiling refrigerant, as which the surface is taken: the apparatus dew point.")
        Quantity temperature,

        @Schema(required = true, description = "Whether moisture condenses: the surface is below the air's dew point.")
        boolean wet,

        @Schema(
                required = true,
                description = "Share of the air that passes the zone as it came: 1 less the effectiveness.")
        double bypassFactor,

        @Schema(required = true, description = "Heat of the wet surface over that of a dry one; 1 where it stays dry.")
        double wetHeatRatio) {}
