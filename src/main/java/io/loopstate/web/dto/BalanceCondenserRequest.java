package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
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

        @Valid @JsonUnwrapped FanRequest fan,

        @Schema(
                ref = "Power",
                description =
                        "Of the fan at full speed in the outdoor air given; follows speed and density by the fan laws.")
        Quantity fanPower) {}
