package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A cooling tower that takes the heat of the condenser. */
@Schema(
        name = "CoolingTowerConditions",
        description =
                "A cooling tower that takes the heat of the condenser; its cold water is what enters the condenser.")
public record CoolingTowerRequest(
        @Schema(ref = "Temperature", description = "Of the air that enters the tower: opens its approach.")
        Quantity wetBulb,

        @Schema(
                description =
                        "Solids in the water of the tower over those in the make-up water, above 1: opens bleed and make-up.")
        Double cyclesOfConcentration) {}
