package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The evaporating coil of a machine. */
@Schema(
        name = "EvaporatorOfMachine",
        description = "The evaporating coil of a machine. Required: conductance and airflow.")
public record BalanceEvaporatorRequest(
        @Schema(
                ref = "ThermalConductance",
                description = "Of the dry coil at this airflow, if all of its area boiled refrigerant.")
        Quantity conductance,

        @Schema(ref = "ThermalConductance", description = "If all of its area superheated vapor. Default: conductance.")
        Quantity superheatingConductance,

        @Schema(description = "As the air enters, as standard air or as a mass flow.")
        AirFlowRequest airflow,

        @DecimalMin("0")
        @DecimalMax(value = "1", inclusive = false)
        @Schema(
                description =
                        "With which the conductance follows the airflow. Default: 0.5, common practice, no source.")
        Double airflowExponent,

        @Schema(ref = "Power", description = "Of the fan; it heats the air behind the coil.")
        Quantity fanPower) {}
