package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The deviations of a share over a grid. */
@Schema(name = "CompareDeviation", description = "The deviations of model over map, less 1, over a grid.")
public record CompareDeviation(
        @Schema(required = true, description = "The largest, with its sign.")
        double largest,

        @Schema(required = true, ref = "Temperature", description = "Where it is.")
        Quantity evaporatingTemperature,

        @Schema(required = true, ref = "Temperature", description = "Where it is.")
        Quantity condensingTemperature,

        @Schema(required = true) double rootMeanSquare) {}
