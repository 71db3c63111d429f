package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** An air-cooled gas cooler. */
@Schema(
        description =
                "An air-cooled gas cooler above the critical pressure. With gasCoolerOutletTemperature, measured, its conductance is "
                        + "sought; with conductance the outlet temperature is. Required besides: entering.dryBulb, airflow, pressure, "
                        + "gasCoolerInletTemperature, and massFlow or heat; with a measured outlet the dry bulb of the leaving air may "
                        + "stand for the heat.")
public record GasCoolerRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-744")
        String refrigerant,

        @Schema(description = "Air before the coil; dryBulb is required.")
        AirReadings entering,

        @Schema(description = "At full fan speed; as the air enters, as standard air or as a mass flow.")
        AirFlowRequest airflow,

        @Schema(description = "Default: counterFlow.") GasCoolerArrangement arrangement,

        @NotNull @Schema(ref = "Pressure", description = "In the gas cooler, above the critical one.")
        Quantity pressure,

        @NotNull @Schema(ref = "Temperature", description = "Of the gas that arrives.")
        Quantity gasCoolerInletTemperature,

        @Schema(ref = "Temperature", description = "Measured; the conductance is then sought.")
        Quantity gasCoolerOutletTemperature,

        @Schema(ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        @Schema(ref = "Power", description = "To be given off.")
        Quantity heat,

        @Schema(ref = "Temperature", description = "Dry bulb of the leaving air; with a measured outlet only.")
        Quantity leavingDryBulb,

        @Schema(ref = "ThermalConductance", description = "Of the clean coil at full airflow.")
        Quantity conductance,

        @DecimalMin("0")
        @DecimalMax("1")
        @Schema(
                description =
                        "Share of full speed, to which the airflow is proportional; 0 where the fan stands still. With a "
                                + "conductance only.",
                defaultValue = "1")
        Double fanSpeed,

        @DecimalMin("0")
        @DecimalMax(value = "1", inclusive = false)
        @Schema(
                description =
                        "With which the conductance follows the airflow. Default: 0.5, common practice, no source.")
        Double airflowExponent,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(
                description =
                        "Airflow without a fan as a share of that at full speed. Default: 0.1, common practice, no source.")
        Double naturalDraft,

        @Schema(ref = "FoulingResistance", description = "Of dirt on the coil; needs area. With a conductance only.")
        Quantity foulingResistance,

        @Schema(ref = "Area", description = "On which dirt lies.")
        Quantity area,

        @Schema(
                ref = "ThermalConductance",
                description =
                        "That the coil is known to have when clean, to judge a measured one by. With a measured outlet only.")
        Quantity cleanConductance,

        @Schema(description = "Limits for the warnings.") GasCoolerLimitsRequest limits,

        @JsonUnwrapped Options options) {}
