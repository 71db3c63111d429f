package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The water of a cooling tower. */
@Schema(
        description =
                "The water of a cooling tower, as if all heat left by evaporation: in truth some leaves as warm air, and drops "
                        + "are carried off.")
public record CoolingTowerFigures(
        @Schema(required = true, ref = "MassFlow") Quantity evaporation,

        @Schema(ref = "MassFlow", description = "Drawn off to keep solids down.")
        Quantity bleed,

        @Schema(ref = "MassFlow", description = "Evaporation and bleed.")
        Quantity makeUp,

        @Schema(required = true, description = "Heat in nominal tower tons of 15000 Btu/h.")
        Double nominalTons,

        @Schema(required = true, ref = "TemperatureDifference", description = "By which the tower cools the water.")
        Quantity range,

        @Schema(ref = "TemperatureDifference", description = "Cold water over the wet bulb of the air.")
        Quantity approach) {}
