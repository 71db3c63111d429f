package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Three of flow, entering and leaving temperature and heat of water. */
@Schema(
        description =
                "The water of a condenser or chiller: exactly three of flow (volumeFlow or massFlow), enteringTemperature, "
                        + "leavingTemperature and heat; the fourth is sought. Pure water, unless density "
                        + "and specificHeatCapacity of a mixture are given.")
public record WaterSideRequest(
        @NotNull @Schema(description = "A condenser heats the water, an evaporator chills it.")
        AirCoil coil,

        @Schema(ref = "Temperature") Quantity enteringTemperature,

        @Schema(ref = "Temperature") Quantity leavingTemperature,

        @Schema(ref = "VolumeFlow", description = "As the water enters. Give this or the mass flow.")
        Quantity volumeFlow,

        @Schema(ref = "MassFlow") Quantity massFlow,

        @Schema(ref = "Power", description = "Exchanged with the water, above zero.")
        Quantity heat,

        @Schema(ref = "Pressure", description = "Of the water; hardly matters. Default: 300 kPa_a.")
        Quantity pressure,

        @Schema(
                ref = "Temperature",
                description =
                        "At which the refrigerant condenses or evaporates, the midpoint of a blend: opens approach and conductance.")
        Quantity saturationTemperature,

        CoolingTowerRequest coolingTower,

        @DecimalMin("0")
        @DecimalMax(value = "1", inclusive = false)
        @Schema(
                description =
                        "Mass of glycol in the mixture, 0 to below 1; brings a warning, the result stays that of water unless density and specificHeatCapacity are given. Default: 0.")
        Double glycolShare,

        @Schema(
                ref = "Density",
                description =
                        "Of a brine or a mixture with glycol at its mean temperature, from its maker's table; with "
                                + "specificHeatCapacity it takes the place of water.")
        Quantity density,

        @Schema(ref = "SpecificEntropy", description = "Of the same mixture, taken as constant.")
        Quantity specificHeatCapacity,

        @Schema(description = "Limits for the warnings.") WaterLimitsRequest limits,

        @JsonUnwrapped AirOptions options) {}
