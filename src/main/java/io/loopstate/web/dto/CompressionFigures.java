package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compression per mass of fluid. */
@Schema(
        description =
                "A compression per mass of fluid. Enthalpy at the outlet = enthalpy at the inlet + work - heatLoss. Efficiencies "
                        + "are as measured where a discharge temperature was given, also where it makes them impossible, which "
                        + "a warning says.")
public record CompressionFigures(
        @Schema(required = true, description = "Absolute discharge over suction pressure.")
        double pressureRatio,

        @Schema(required = true, description = "Specific volume at the suction over that at the discharge.")
        double volumeRatio,

        @Schema(required = true, ref = "SpecificEnergy", description = "At constant entropy.")
        Quantity isentropicWork,

        @Schema(
                ref = "SpecificEnergy",
                description = "Integral of v dp along the real path; absent where the enthalpy does not rise.")
        Quantity polytropicWork,

        @Schema(required = true, ref = "SpecificEnergy") Quantity work,

        @Schema(
                required = true,
                ref = "SpecificEnergy",
                description = "Given off during compression, by the shell or the cooled cylinder.")
        Quantity heatLoss,

        @Schema(required = true) double isentropicEfficiency,

        @Schema(description = "Polytropic work over work.") Double polytropicEfficiency,

        @Schema(required = true, description = "n of p v^n between the ends at constant entropy.")
        double isentropicIndex,

        @Schema(required = true, description = "n of p v^n between the ends.")
        double polytropicIndex,

        @Schema(required = true, ref = "Temperature") Quantity dischargeTemperature,

        @Schema(required = true, ref = "Temperature") Quantity isentropicDischargeTemperature) {}
