package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The air of a coil. */
@Schema(description = "The air of a coil: both states, flows, and heat, sensible and latent.")
public record AirSideReply(
        @Schema(required = true) MoistAirState entering,

        @Schema(required = true) MoistAirState leaving,

        @Schema(required = true, ref = "MassFlow", description = "Of dry air.")
        Quantity massFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "As the air enters.")
        Quantity enteringVolumeFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "As the air leaves.")
        Quantity leavingVolumeFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "Of standard air, 0.075 lb/ft3, of the same mass.")
        Quantity standardVolumeFlow,

        @Schema(required = true, ref = "Power", description = "Exchanged between coil and air.")
        Quantity heat,

        @Schema(required = true, ref = "Power", description = "Of the air between the readings, fan included.")
        Quantity sensibleHeat,

        @Schema(
                required = true,
                ref = "Power",
                description = "Of the water that leaves the air, less what the condensate carries away.")
        Quantity latentHeat,

        @Schema(required = true, description = "Sensible over sensible and latent heat.")
        Double sensibleHeatRatio,

        @Schema(required = true, ref = "MassFlow", description = "Water that leaves the air.")
        Quantity condensate,

        @Schema(required = true, ref = "Power") Quantity fanHeat,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Between the readings, without sign: the split of the air.")
        Quantity temperatureChange,

        @Schema(
                required = true,
                ref = "VolumeFlow",
                description = "As the air enters, for each ton of refrigeration (12000 Btu/h) of heat.")
        Quantity airflowPerTon,

        @Schema(required = true, description = "For the flow as it enters.")
        AirHeatFactors enteringFactors,

        @Schema(required = true, description = "For a flow of standard air.")
        AirHeatFactors standardFactors,

        @Schema(ref = "TemperatureDifference", description = "Of a condenser, where its temperature is given.")
        Quantity condensingOverAmbient,

        @Schema(ref = "TemperatureDifference", description = "Of an evaporator, where its temperature is given.")
        Quantity evaporatorTemperatureDifference,

        @Schema(
                ref = "TemperatureDifference",
                description = "Between refrigerant and leaving air, negative where the temperatures cross.")
        Quantity approach,

        @Schema(description = "Share of the way to the refrigerant's temperature that the air goes.")
        Double effectiveness,

        @Schema(ref = "TemperatureDifference", description = "Absent where the temperatures cross.")
        Quantity logarithmicMeanDifference,

        @Schema(
                ref = "ThermalConductance",
                description = "Heat over the logarithmic mean difference, the refrigerant taken as of one temperature.")
        Quantity conductance,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) AirBasis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
