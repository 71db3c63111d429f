package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A point of a grid on which two models are compared. */
@Schema(
        name = "CompareGridRow",
        description = "A point of a grid: either both models and their difference, or why there is none.")
public record CompareGridRow(
        @Schema(required = true, ref = "Temperature", description = "Dew temperature at the suction.")
        Quantity evaporatingTemperature,

        @Schema(required = true, ref = "Temperature", description = "Dew temperature at the discharge.")
        Quantity condensingTemperature,

        @Schema(description = "Absolute discharge over suction pressure.")
        Double pressureRatio,

        ModelFigures map,

        ModelFigures machine,

        CompareFigures difference,

        @Schema(description = "Why the models are not compared here.")
        String refused) {}
