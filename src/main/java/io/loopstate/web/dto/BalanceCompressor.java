package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The compressor of a machine in balance. */
@Schema(name = "CompressorInBalance", description = "The compressor of a machine in balance.")
public record BalanceCompressor(
        @Schema(required = true, description = "Absolute discharge over suction pressure.")
        double pressureRatio,

        @Schema(required = true, ref = "Temperature") Quantity dischargeTemperature,

        @Schema(
                required = true,
                ref = "Power",
                description = "At the compressor's shaft; of a rating map the power that it states.")
        Quantity shaftPower,

        @Schema(description = "Suction vapor drawn in over displacement; absent for a rating map.")
        Double volumetricEfficiency,

        @Schema(required = true, description = "Isentropic over electrical power.")
        double overallEfficiency,

        @Schema(ref = "ElectricCurrent", description = "Where the rating map tells it.")
        Quantity current) {}
