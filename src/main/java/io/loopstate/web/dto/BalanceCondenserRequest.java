package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The condensing coil of a machine. */
@Schema(
        name = "CondenserOfMachine",
        description = "The condensing coil of a machine. Required: airflow, and conductance or zoneConductances.")
public record BalanceCondenserRequest(
        @Schema(ref = "ThermalConductance", description = "At full airflow, the same in every zone.")
        Quantity conductance,

        ZoneConductances zoneConductances,

        @Schema(description = "At full fan speed; as the air enters, as standard air or as a mass flow.")
        AirFlowRequest airflow,

        @Schema(description = "Default: crossFlow.") AirArrangement arrangement,

        @DecimalMin("0")
        @DecimalMax("1")
        @Schema(
                description =
                        "Share of full speed, to which the airflow is proportional; 0 where the fan stands still.",
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

        @Schema(
                ref = "Power",
                description =
                        "Of the fan at full speed in the outdoor air given; follows speed and density by the fan laws.")
        Quantity fanPower) {}
