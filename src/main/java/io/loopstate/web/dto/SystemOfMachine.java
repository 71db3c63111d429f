package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A machine with its fans. */
@Schema(name = "SystemOfMachine", description = "A machine with its fans, as far as their power is given.")
public record SystemOfMachine(
        @Schema(
                ref = "Power",
                description = "At the fan speed and in the air of this case: cube of the speed, density of the air.")
        Quantity condenserFanPower,

        @Schema(ref = "Power", description = "In the air of this case.")
        Quantity evaporatorFanPower,

        @Schema(required = true, ref = "Power", description = "Of the compressor and of the fans whose power is given.")
        Quantity electricalPower,

        @Schema(required = true, description = "Refrigerating capacity over that power.")
        double coefficientOfPerformance,

        @Schema(required = true, description = "The same in Btu/h per W.")
        double energyEfficiencyRatio,

        @Schema(
                ref = "Power",
                description = "Refrigerating capacity less the heat of the evaporator fan; where its power is given.")
        Quantity netCapacity,

        @Schema(description = "Net capacity over the power of compressor and fans.")
        Double netCoefficientOfPerformance,

        @Schema(description = "The same in Btu/h per W.") Double netEnergyEfficiencyRatio) {}
