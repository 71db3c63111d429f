package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Where the heat comes from and goes to: refrigeratingCapacity + suctionLineHeatGain + electricalPower - heatLoss = heatRejected. */
@Schema(
        description =
                "Where the heat comes from and goes to: refrigeratingCapacity + suctionLineHeatGain + electricalPower - heatLoss = heatRejected.")
public record EnergyBalanceFigures(
        @Schema(required = true, ref = "Power") Quantity refrigeratingCapacity,

        @Schema(required = true, ref = "Power") Quantity suctionLineHeatGain,

        @Schema(required = true, ref = "Power") Quantity electricalPower,

        @Schema(required = true, ref = "Power", description = "To the surroundings of the compressor.")
        Quantity heatLoss,

        @Schema(
                required = true,
                ref = "Power",
                description = "From the states before and after the condenser or gas cooler.")
        Quantity heatRejected,

        @Schema(required = true, description = "Left less right side, over the right.")
        double residual,

        @Schema(required = true, description = "Refrigerating capacity over electrical power.")
        double coefficientOfPerformance,

        @Schema(required = true, description = "The same in Btu/h per W.")
        double energyEfficiencyRatio) {}
