package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** An air-cooled condensing coil at work. */
@Schema(description = "An air-cooled condensing coil at work.")
public record CoilReply(
        @Schema(required = true, description = "Inlet and outlet of the condenser.")
        List<FluidState> points,

        @Schema(required = true) LevelTemperatures condensing,

        @Schema(required = true, ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        @Schema(required = true, ref = "Power") Quantity heatRejected,

        @Schema(required = true, description = "In the direction of the refrigerant; those without heat are left out.")
        List<CoilZoneFigures> zones,

        @Schema(
                required = true,
                ref = "ThermalConductance",
                description =
                        "Of the coil as it works, fan and dirt included, if all of it condensed; with condensing given it is the "
                                + "one conductance of every zone that explains the readings.")
        Quantity conductance,

        @Schema(
                ref = "ThermalConductance",
                description =
                        "Heat over the logarithmic mean from the condensing midpoint to the air, as if all of it condensed at one "
                                + "temperature; absent where those cross.")
        Quantity simpleConductance,

        @Schema(required = true) MoistAirState entering,

        @Schema(required = true, description = "Mean of all air.")
        MoistAirState leaving,

        @Schema(required = true, ref = "MassFlow", description = "Of dry air, at the fan speed in force.")
        Quantity airMassFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "As the air enters, at the fan speed in force.")
        Quantity enteringVolumeFlow,

        @Schema(required = true, ref = "TemperatureDifference", description = "Condensing midpoint over entering air.")
        Quantity condensingOverAmbient,

        @Schema(required = true, ref = "TemperatureDifference", description = "Condensing midpoint over leaving air.")
        Quantity approach,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Least difference between refrigerant and air anywhere in the coil.")
        Quantity pinch,

        @Schema(required = true, description = "Where it is.")
        CoilZoneName pinchZone,

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
