package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The cycle per mass of refrigerant, as far as the readings reach. */
@Schema(description = "The cycle per mass of refrigerant, as far as the readings reach.")
public record MeasuredPerformance(
        @Schema(
                ref = "SpecificEnergy",
                description = "Up to the evaporator's outlet if that was read, else up to the compressor.")
        Quantity refrigeratingEffect,

        @Schema(ref = "SpecificEnergy") Quantity compressorWork,

        @Schema(ref = "SpecificEnergy", description = "From the discharge line to the liquid line.")
        Quantity heatRejectionPerMass,

        @Schema(description = "Refrigerating effect over compressor work.")
        Double coefficientOfPerformance,

        @Schema(description = "The same in Btu/h per W.") Double energyEfficiencyRatio,

        @Schema(description = "Te / (Tc - Te) between the midpoint temperatures.")
        Double carnotCoefficientOfPerformance,

        @Schema(description = "Behind the valve.") Double evaporatorInletQuality) {}
