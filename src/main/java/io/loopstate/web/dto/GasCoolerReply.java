package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** An air-cooled gas cooler at work. */
@Schema(description = "An air-cooled gas cooler at work.")
public record GasCoolerReply(
        @Schema(required = true, description = "Inlet and outlet of the gas cooler.")
        List<FluidState> points,

        @Schema(required = true, ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        @Schema(required = true, ref = "Power") Quantity heatRejected,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Refrigerant at the outlet over entering air.")
        Quantity approach,

        @Schema(
                required = true,
                ref = "ThermalConductance",
                description =
                        "Of the coil as it works, fan and dirt included; with the outlet measured that which explains the readings.")
        Quantity conductance,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Least difference between refrigerant and air anywhere in the gas cooler.")
        Quantity pinch,

        @Schema(required = true, ref = "Temperature", description = "Of the refrigerant where that is.")
        Quantity pinchTemperature,

        @Schema(required = true, description = "Ten parts of equal heat, in the direction of the refrigerant.")
        List<GasCoolerSegment> segments,

        @Schema(required = true) MoistAirState entering,

        @Schema(required = true, description = "Mean of all air.")
        MoistAirState leaving,

        @Schema(required = true, ref = "MassFlow", description = "Of dry air, at the fan speed in force.")
        Quantity airMassFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "As the air enters, at the fan speed in force.")
        Quantity enteringVolumeFlow,

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
