package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The range of an equation of state as its source states it. */
@Schema(description = "The range of the equation of state as its source states it; nothing is answered outside.")
public record ModelRange(
        @Schema(required = true, ref = "Temperature") Quantity minTemperature,

        @Schema(required = true, ref = "Temperature") Quantity maxTemperature,

        @Schema(required = true, ref = "Pressure") Quantity maxPressure,

        @Schema(required = true, ref = "Temperature", description = "Lower end of the saturation line.")
        Quantity minSaturationTemperature) {}
