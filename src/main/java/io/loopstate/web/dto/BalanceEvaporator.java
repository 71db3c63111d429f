package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The evaporating coil of a machine in balance. */
@Schema(name = "EvaporatorInBalance", description = "The evaporating coil of a machine in balance.")
public record BalanceEvaporator(
        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Entering air over the evaporating midpoint.")
        Quantity temperatureDifference,

        @Schema(required = true, ref = "Power", description = "Of the air.")
        Quantity sensibleHeat,

        @Schema(
                required = true,
                ref = "Power",
                description = "Of the water that leaves the air, less what the condensate carries away.")
        Quantity latentHeat,

        @Schema(required = true, description = "Sensible over total heat.")
        double sensibleHeatRatio,

        @Schema(required = true, ref = "MassFlow", description = "Water that leaves the air.")
        Quantity condensate,

        @Schema(required = true, description = "Of the area, in which the refrigerant boils; the rest superheats.")
        double boilingShare,

        @Schema(
                required = true,
                description =
                        "Share of the area that nothing needs; above 0 where the superheat asked for sets the pressure.")
        double areaLeftOver,

        @Schema(required = true, ref = "ThermalConductance", description = "As it works, if all of it boiled.")
        Quantity conductance,

        @Schema(required = true, ref = "MassFlow", description = "Of dry air.")
        Quantity airMassFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "As the air enters.")
        Quantity enteringVolumeFlow,

        @Schema(
                required = true,
                ref = "VolumeFlow",
                description = "As the air enters, for each ton of refrigeration (12000 Btu/h).")
        Quantity airflowPerTon,

        @Schema(required = true) MoistAirState entering,

        @Schema(required = true, description = "Mean of all air.")
        MoistAirState leaving) {}
