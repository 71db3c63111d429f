package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
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

        @Valid @JsonUnwrapped FanRequest fan,

        @JsonUnwrapped DirtRequest dirt,

        @Schema(description = "Limits for the warnings.") GasCoolerLimitsRequest limits,

        @JsonUnwrapped Options options) {}
