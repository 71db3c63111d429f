package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A rating map at a working point. */
@Schema(description = "A rating map at a working point.")
public record MapFigures(
        @Schema(required = true, ref = "Temperature") Quantity suctionDewTemperature,

        @Schema(required = true, ref = "Temperature") Quantity dischargeDewTemperature,

        @Schema(required = true, description = "Absolute.") double pressureRatio,

        @Schema(required = true, ref = "MassFlow", description = "At the suction of the rating.")
        Quantity ratedMassFlow,

        @Schema(required = true, ref = "Power") Quantity ratedPower,

        @Schema(required = true, ref = "Power", description = "At suction and liquid of the rating.")
        Quantity ratedCapacity,

        @Schema(required = true, ref = "Temperature") Quantity ratedSuctionTemperature,

        @Schema(required = true, ref = "MassFlow", description = "At the actual suction.")
        Quantity massFlow,

        @Schema(required = true, ref = "Power", description = "At the actual suction.")
        Quantity power,

        @Schema(ref = "ElectricCurrent") Quantity current,

        @Schema(required = true, ref = "Power") Quantity heatLoss,

        @Schema(required = true, description = "Isentropic power over power.")
        double overallEfficiency,

        @Schema(required = true, ref = "Temperature") Quantity dischargeTemperature,

        @Schema(required = true) boolean insideEnvelope) {}
