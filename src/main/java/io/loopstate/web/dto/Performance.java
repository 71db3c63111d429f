package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What a cycle does, per mass of refrigerant and, where a size was given, as a whole. */
@Schema(
        description =
                "What the cycle does, per mass of refrigerant and, where a size was given, as a whole. What the request "
                        + "does not determine is absent.")
public record Performance(
        @Schema(required = true, description = "Absolute discharge over suction pressure at the compressor.")
        double pressureRatio,

        @Schema(required = true, ref = "SpecificEnergy") Quantity isentropicWork,

        @Schema(
                required = true,
                ref = "SpecificEnergy",
                description =
                        "Put into the refrigerant; of a hermetic compressor with a known motor the electrical input.")
        Quantity compressorWork,

        @Schema(required = true, ref = "SpecificEnergy", description = "Given off by the compressor's shell.")
        Quantity compressorHeatLoss,

        @Schema(required = true, ref = "SpecificEnergy", description = "Taken up in the evaporator.")
        Quantity refrigeratingEffect,

        @Schema(required = true, ref = "SpecificEnergy") Quantity suctionLineHeatGain,

        @Schema(required = true, ref = "SpecificEnergy") Quantity dischargeLineHeatLoss,

        @Schema(required = true, ref = "SpecificEnergy") Quantity liquidLineHeatGain,

        @Schema(required = true, ref = "SpecificEnergy", description = "Given off in the condenser or gas cooler.")
        Quantity heatRejectionPerMass,

        @Schema(required = true) RejectedHeat heatRejectionParts,

        @Schema(required = true, description = "Heat rejected over heat taken up.")
        double heatRejectionFactor,

        @Schema(required = true, description = "Refrigerating effect over compressor work.")
        double coefficientOfPerformance,

        @Schema(required = true, description = "Heat rejected over compressor work.")
        double heatingCoefficientOfPerformance,

        @Schema(required = true, description = "The coefficient of performance in Btu/h per W.")
        double energyEfficiencyRatio,

        @Schema(required = true, ref = "Power", description = "Compressor power for one ton of refrigeration.")
        Quantity powerPerTon,

        @Schema(
                description =
                        "Te / (Tc - Te) between the midpoint temperatures; above the critical pressure with the temperature "
                                + "at the outlet of the gas cooler for Tc.")
        Double carnotCoefficientOfPerformance,

        @Schema(description = "Coefficient of performance over that of Carnot.")
        Double carnotShare,

        @Schema(required = true, ref = "Temperature", description = "At the compressor's outlet.")
        Quantity dischargeTemperature,

        @Schema(
                required = true,
                ref = "VolumetricCapacity",
                description = "Refrigerating effect per volume of vapor drawn in.")
        Quantity volumetricCapacity,

        @Schema(description = "Where vapor reaches the valve.")
        Double valveInletQuality,

        @Schema(description = "Where the valve ends inside the dome.")
        Double evaporatorInletQuality,

        @Schema(ref = "MassFlow") Quantity massFlow,

        @Schema(ref = "Power", description = "Taken up in the evaporator.")
        Quantity refrigeratingCapacity,

        @Schema(ref = "Power", description = "Put into the refrigerant.")
        Quantity compressorPower,

        @Schema(ref = "Power", description = "Where the motor is known or cooled by the refrigerant.")
        Quantity electricalPower,

        @Schema(ref = "Power", description = "Given off in the condenser or gas cooler.")
        Quantity heatRejected,

        @Schema(ref = "VolumeFlow", description = "Vapor drawn in by the compressor.")
        Quantity suctionVolumeFlow,

        @Schema(ref = "VolumeFlow", description = "Volume swept by the compressor.")
        Quantity displacement) {}
