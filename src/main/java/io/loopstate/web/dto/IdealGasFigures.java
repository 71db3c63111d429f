package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Textbook formulas beside the real fluid. */
@Schema(
        description =
                "What the formulas of an ideal gas with constant heat capacities give, for comparison with the real fluid; "
                        + "nothing else in the reply comes from them.")
public record IdealGasFigures(
        @Schema(
                required = true,
                description = "Which formulas these are.",
                examples = "for class: pv = RT, constant cp")
        String label,

        @Schema(required = true, ref = "SpecificEntropy") Quantity gasConstant,

        @Schema(required = true, description = "cp / cv at the start.")
        double heatCapacityRatio,

        @Schema(required = true, description = "n of p v^n: the one given, or that of the path.")
        double index,

        @Schema(required = true, ref = "Temperature") Quantity dischargeTemperature,

        @Schema(required = true, ref = "SpecificEnergy") Quantity work,

        @Schema(required = true, ref = "SpecificEnergy") Quantity isentropicWork,

        @Schema(required = true, ref = "SpecificEnergy") Quantity isothermalWork) {}
