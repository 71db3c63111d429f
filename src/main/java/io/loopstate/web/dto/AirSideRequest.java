package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Three of airflow, entering air, leaving air and heat. */
@Schema(
        description =
                "The air of a coil: exactly three of airflow, entering (its dryBulb), leaving (its dryBulb) and heat; the fourth "
                        + "is sought.")
public record AirSideRequest(
        @NotNull AirCoil coil,

        @Schema(description = "Air before the coil.") AirReadings entering,

        @Schema(description = "Air behind the coil; of a condenser its humidity follows and must not be given.")
        AirReadings leaving,

        AirFlowRequest airflow,

        @Schema(ref = "Power", description = "Exchanged between coil and air, above zero; total heat of an evaporator.")
        Quantity heat,

        @Schema(
                ref = "Power",
                description =
                        "Of a fan that stands between the two readings, all of which heats the air. Default: none.")
        Quantity fanPower,

        @Schema(
                ref = "Temperature",
                description =
                        "At which the refrigerant condenses or evaporates, the midpoint of a blend: opens condensing over ambient, "
                                + "approach and conductance.")
        Quantity saturationTemperature,

        @Schema(description = "Limits for the warnings.") AirLimitsRequest limits,

        @JsonUnwrapped AirOptions options) {}
