package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What is asked beside the base case; each member asks for its row. */
@Schema(
        name = "WhatIf",
        description =
                "What is asked beside the base case: each gives a row of its own, with one thing different and the differences it "
                        + "makes. Fans move the same volume of air unless that is the difference; conductances follow the mass "
                        + "flow of the air.")
public record WhatIfRequest(
        @Schema(
                description =
                        "Asks for dirtyCondenser, hotDay, lowIndoorAirflow, condenserFanSpeed and condenserFanOff with their defaults where they are not given.")
        Boolean usual,

        @Schema(
                description =
                        "A dirty condenser, with what the two members below say. Asked for by either of them as well.")
        Boolean dirtyCondenser,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(
                description =
                        "Outdoor airflow left, above 0 to 1. Default: 0.7, 30 % less, common practice, no source.")
        Double dirtyCondenserAirflow,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(
                description =
                        "Conductance left by dirt, above 0 to 1, beside what the airflow costs. Default: 0.9, common practice, no source.")
        Double dirtyCondenserConductance,

        @Schema(
                ref = "TemperatureDifference",
                description = "By which the outdoor air is warmer. Default with usual: 10 K.")
        Quantity hotDay,

        @Schema(
                ref = "Length",
                description = "The same machine and air at this height above sea level, -500 to 11000 m.")
        Quantity altitude,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(
                description =
                        "Indoor airflow left, above 0 to 1. Default with usual: 0.6, a blocked filter, common practice, no source.")
        Double lowIndoorAirflow,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Condenser fan as a share of full speed, above 0 to 1. Default with usual: 0.5.")
        Double condenserFanSpeed,

        @Schema(description = "The condenser fan stands still: natural draft is left.")
        Boolean condenserFanOff,

        @Schema(
                description =
                        "Another refrigerant in the same machine: displacement, efficiencies and conductances are kept. Charge, oil "
                                + "and approval are not checked: the manufacturer decides.")
        String refrigerant) {}
