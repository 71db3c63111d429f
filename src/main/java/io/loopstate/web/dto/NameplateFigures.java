package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What a nameplate determines; what it does not is absent. */
@Schema(description = "What a nameplate determines; what it does not is absent.")
public record NameplateFigures(
        @Schema(required = true, description = "Absolute.") double pressureRatio,

        @Schema(required = true, ref = "MassFlow") Quantity massFlow,

        @Schema(required = true, ref = "VolumeFlow") Quantity suctionVolumeFlow,

        @Schema(ref = "Power") Quantity refrigeratingCapacity,

        @Schema(ref = "VolumeFlow") Quantity displacement,

        @Schema(description = "Volume of the suction vapor drawn in over displacement.")
        Double volumetricEfficiency,

        @Schema(ref = "Volume") Quantity displacementPerRevolution,

        @Schema(ref = "Length") Quantity bore,

        @Schema(ref = "Length") Quantity stroke,

        @Schema(required = true, ref = "Power") Quantity isentropicPower,

        @Schema(ref = "Power") Quantity shaftPower,

        @Schema(ref = "Power") Quantity electricalPower,

        @Schema(description = "Isentropic over shaft power.")
        Double shaftEfficiency,

        @Schema(description = "Isentropic over electrical power.")
        Double overallEfficiency,

        @Schema(description = "Capacity over the electrical power, or else over the shaft power.")
        Double coefficientOfPerformance) {}
