package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What ideal-gas formulas give for the same volumes; for comparison, nothing else in the reply comes from them. */
@Schema(
        description =
                "What ideal-gas formulas give for the same volumes; for comparison, nothing else in the reply comes from them.")
public record CylinderIdealGas(
        @Schema(required = true, description = "Which formulas these are.")
        String label,

        @Schema(required = true, description = "n of p v^n.")
        double index,

        @Schema(required = true, ref = "Pressure") Quantity absolutePressure,

        @Schema(required = true, ref = "Pressure") Quantity gaugePressure,

        @Schema(required = true, ref = "Temperature") Quantity temperature,

        @Schema(required = true, ref = "Energy") Quantity work) {}
