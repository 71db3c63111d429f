package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The heat of a condenser in all, as far as the request determines it. */
@Schema(name = "CondenserHeat", description = "The heat of a condenser in all, as far as the request determines it.")
public record DutyHeat(
        @Schema(ref = "MassFlow") Quantity massFlow,

        @Schema(ref = "Power") Quantity refrigeratingCapacity,

        @Schema(
                ref = "Power",
                description =
                        "What the compressor puts into the refrigerant, before its shell and an oil cooler take from it.")
        Quantity refrigerantPower,

        @Schema(
                ref = "Power",
                description =
                        "Given off in the condenser: by states and flow where known, else by the machine's balance.")
        Quantity heatRejected,

        @Schema(ref = "Power", description = "Of the heat rejected: cooling of the vapor down to its dew point.")
        Quantity desuperheating,

        @Schema(ref = "Power") Quantity condensing,

        @Schema(ref = "Power", description = "Of the heat rejected: cooling of the liquid below its bubble point.")
        Quantity subcooling,

        @Schema(ref = "Power", description = "Of the heat rejected: cooling above the critical pressure.")
        Quantity gasCooling,

        @Schema(required = true, ref = "Power") Quantity oilCoolerHeat,

        @Schema(required = true, ref = "Power") Quantity shellHeatLoss,

        @Schema(description = "Heat of the condenser over heat taken up in the evaporator.")
        Double heatRejectionFactor,

        @Schema(description = "Heat of condenser and oil cooler over heat taken up in the evaporator.")
        Double machineHeatRejectionFactor,

        @Schema(
                ref = "Power",
                description =
                        "Left for the condenser by the machine's balance, where capacity and power are both given.")
        Quantity balanceHeat,

        @Schema(description = "Balance less heat by the states, as a share of the latter.")
        Double balanceDifference) {}
