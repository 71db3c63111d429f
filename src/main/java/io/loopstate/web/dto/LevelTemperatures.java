package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The temperatures at which a refrigerant evaporates or condenses at one pressure. */
@Schema(
        name = "SaturationTemperatures",
        description =
                "The temperatures at which the refrigerant evaporates or condenses at one pressure: superheat counts from "
                        + "the dew point, subcooling from the bubble point, temperature differences to air from the midpoint.")
public record LevelTemperatures(
        @Schema(required = true, ref = "Pressure") Quantity pressure,

        @Schema(required = true, ref = "Temperature") Quantity bubbleTemperature,

        @Schema(required = true, ref = "Temperature", description = "Half way between the two others.")
        Quantity midpointTemperature,

        @Schema(required = true, ref = "Temperature") Quantity dewTemperature,

        @Schema(required = true, ref = "TemperatureDifference")
        Quantity temperatureGlide) {}
