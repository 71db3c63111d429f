package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compressor at its working point; what was not given is absent. */
@Schema(description = "A compressor at its working point; what was not given is absent.")
public record MachineFigures(
        @Schema(required = true, description = "Absolute, between the ports.")
        double pressureRatio,

        @Schema(ref = "Volume") Quantity displacementPerRevolution,

        @Schema(
                required = true,
                ref = "VolumeFlow",
                description = "Volume swept; of a centrifugal compressor the volume drawn in.")
        Quantity displacement,

        @Schema(required = true, description = "Volume of the suction vapor drawn in over displacement.")
        double volumetricEfficiency,

        @Schema(required = true, ref = "MassFlow") Quantity massFlow,

        @Schema(required = true, ref = "VolumeFlow") Quantity suctionVolumeFlow,

        @Schema(required = true, ref = "Power", description = "Between the ports at constant entropy.")
        Quantity isentropicPower,

        @Schema(required = true, ref = "Power", description = "On the vapor.")
        Quantity indicatedPower,

        @Schema(required = true, ref = "Power", description = "Ends up in the vapor.")
        Quantity frictionLoss,

        @Schema(required = true, ref = "Power", description = "At the shaft of the compressor.")
        Quantity shaftPower,

        @Schema(required = true, ref = "Power", description = "To the surroundings.")
        Quantity driveLoss,

        @Schema(required = true, ref = "Power") Quantity motorLoss,

        @Schema(required = true, ref = "Power", description = "At the terminals.")
        Quantity electricalPower,

        @Schema(required = true, ref = "Power", description = "Given off by shell and cooled cylinder.")
        Quantity shellLoss,

        @Schema(required = true, ref = "Power", description = "All that the surroundings take.")
        Quantity heatLoss,

        @Schema(ref = "ElectricCurrent", description = "Per line.")
        Quantity current,

        @Schema(required = true, description = "Isentropic over shaft power.")
        double shaftEfficiency,

        @Schema(required = true, description = "Isentropic over electrical power.")
        double overallEfficiency,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "By which the motor warms the suction vapor.")
        Quantity motorWarming,

        @Schema(required = true, ref = "Temperature") Quantity dischargeTemperature) {}
