package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The deviations of a temperature over a grid. */
@Schema(name = "CompareTemperatureDeviation", description = "The deviations of model less map over a grid.")
public record CompareTemperatureDeviation(
        @Schema(required = true, ref = "TemperatureDifference", description = "The largest, with its sign.")
        Quantity largest,

        @Schema(required = true, ref = "Temperature", description = "Where it is.")
        Quantity evaporatingTemperature,

        @Schema(required = true, ref = "Temperature", description = "Where it is.")
        Quantity condensingTemperature,

        @Schema(required = true, ref = "TemperatureDifference")
        Quantity rootMeanSquare) {}
