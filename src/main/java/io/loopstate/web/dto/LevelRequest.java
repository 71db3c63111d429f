package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** An evaporating or condensing level. */
@Schema(
        name = "SaturationLevel",
        description = "An evaporating or condensing level: exactly one of temperature and pressure.")
public record LevelRequest(
        @Schema(
                ref = "Temperature",
                description = "Saturation temperature, a dew-point temperature unless basis says otherwise.")
        Quantity temperature,

        @Schema(ref = "Pressure") Quantity pressure,

        @Schema(description = "Which temperature is meant, the dew point unless given; without effect on a pressure.")
        SaturationBasis basis) {}
