package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** An air-cooled evaporating coil at work. */
@Schema(description = "An air-cooled evaporating coil at work.")
public record EvaporatingCoilReply(
        @Schema(required = true, description = "Inlet and outlet of the evaporator.")
        List<FluidState> points,

        @Schema(required = true) LevelTemperatures evaporating,

        @Schema(required = true, ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        @Schema(required = true, ref = "Power", description = "Taken from the air, sensible and latent.")
        Quantity heat,

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

        @Schema(ref = "TemperatureDifference", description = "At the outlet; absent where liquid leaves.")
        Quantity superheat,

        @Schema(required = true, description = "In the direction of the refrigerant; those without heat are left out.")
        List<EvaporatingCoilZoneFigures> zones,

        @Schema(required = true) EvaporatingCoilSurface surface,

        @Schema(
                required = true,
                description =
                        "Share of the area that nothing needs; above 0 where the superheat asked for sets the pressure.")
        double areaLeftOver,

        @Schema(
                required = true,
                ref = "ThermalConductance",
                description =
                        "Of the dry coil as it works, fan and dirt included, if all of it boiled; with evaporating given it is the "
                                + "one conductance of both zones that explains the readings.")
        Quantity conductance,

        @Schema(required = true) MoistAirState entering,

        @Schema(required = true, description = "Mean of all air.")
        MoistAirState leaving,

        @Schema(required = true, ref = "MassFlow", description = "Of dry air, at the fan speed in force.")
        Quantity airMassFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "As the air enters, at the fan speed in force.")
        Quantity enteringVolumeFlow,

        @Schema(
                required = true,
                ref = "VolumeFlow",
                description = "As the air enters, for each ton of refrigeration (12000 Btu/h).")
        Quantity airflowPerTon,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Entering air over the evaporating midpoint.")
        Quantity evaporatorTemperatureDifference,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Least difference between air and refrigerant anywhere in the coil.")
        Quantity pinch,

        @Schema(required = true, description = "Where it is.")
        EvaporatingCoilZoneName pinchZone,

        @Schema(description = "Measured over clean conductance, where that is given.")
        Double cleanliness,

        @Schema(
                ref = "FoulingResistance",
                description =
                        "Layer that explains the difference, where the area is given; negative if cleaner than clean.")
        Quantity foulingResistance,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
