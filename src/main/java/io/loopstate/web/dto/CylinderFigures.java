package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The cylinder as a whole: work + heat = energyChange, and work = workOfAtmosphere + workOnRod. */
@Schema(description = "The cylinder as a whole: work + heat = energyChange, and work = workOfAtmosphere + workOnRod.")
public record CylinderFigures(
        @Schema(required = true, ref = "Mass") Quantity mass,

        @Schema(required = true, ref = "Volume") Quantity startVolume,

        @Schema(required = true, ref = "Volume") Quantity endVolume,

        @Schema(required = true, description = "End over start, absolute.")
        double pressureRatio,

        @Schema(
                description =
                        "End over start as two gauges would have it, which is no ratio of pressures; absent where the start reads zero.")
        Double gaugeRatio,

        @Schema(required = true, description = "End over start.")
        double volumeRatio,

        @Schema(required = true, ref = "Energy", description = "Done on the gas; negative where the gas does it.")
        Quantity work,

        @Schema(required = true, ref = "Energy", description = "Taken up by the gas; negative where it gives it.")
        Quantity heat,

        @Schema(required = true, ref = "Energy", description = "Of the internal energy.")
        Quantity energyChange,

        @Schema(required = true, ref = "Energy", description = "That the surrounding air does on the piston.")
        Quantity workOfAtmosphere,

        @Schema(required = true, ref = "Energy", description = "That is left for the hand.")
        Quantity workOnRod,

        @Schema(required = true, description = "n of p v^n between the ends.")
        double index) {}
