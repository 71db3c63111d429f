package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Work of both stages at an intermediate pressure. */
@Schema(description = "Work of both stages at an intermediate pressure.")
public record IntermediateFigures(
        @Schema(required = true, ref = "Pressure") Quantity pressure,

        @Schema(required = true, ref = "SpecificEnergy") Quantity work,

        @Schema(required = true, description = "Of the work of one stage.")
        double savedShare) {}
