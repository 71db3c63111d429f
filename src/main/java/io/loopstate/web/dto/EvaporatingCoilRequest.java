package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** An air-cooled evaporating coil. */
@Schema(
        description =
                "An air-cooled evaporating coil. With evaporating, measured, its dry conductance is sought; with conductance the "
                        + "evaporating level is. Required besides: entering.dryBulb, airflow, how the refrigerant arrives "
                        + "(liquidTemperature or inletQuality) and leaves, and its massFlow or heat; with evaporating the leaving air "
                        + "may stand for the heat.")
public record EvaporatingCoilRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @Schema(description = "Air before the coil; dryBulb is required.")
        AirReadings entering,

        @Schema(description = "At full fan speed; as the air enters, as standard air or as a mass flow.")
        AirFlowRequest airflow,

        @Schema(ref = "Temperature", description = "Of the liquid before the valve.")
        Quantity liquidTemperature,

        @Schema(
                ref = "Pressure",
                description = "Of the liquid before the valve; without it the liquid is taken as just boiling.")
        Quantity liquidPressure,

        @DecimalMin("0")
        @DecimalMax(value = "1", inclusive = false)
        @Schema(description = "Vapor quality behind the valve, 0 to below 1.")
        Double inletQuality,

        @Schema(ref = "TemperatureDifference", description = "Above the dew point at the outlet, 0 or more.")
        Quantity superheat,

        @Schema(ref = "Temperature", description = "Not below the dew point.")
        Quantity evaporatorOutletTemperature,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Vapor quality where evaporation is not complete, above 0 to 1.")
        Double evaporatorOutletQuality,

        @Schema(ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        @Schema(ref = "Power", description = "To be taken from the air, sensible and latent.")
        Quantity heat,

        @Schema(description = "Air behind the coil; with evaporating only, in place of massFlow and heat.")
        AirReadings leaving,

        @Schema(description = "Measured; the conductance is then sought.")
        LevelRequest evaporating,

        @Schema(
                ref = "ThermalConductance",
                description = "Of the clean, dry coil at full airflow, if all of its area boiled refrigerant.")
        Quantity conductance,

        @Schema(ref = "ThermalConductance", description = "If all of its area superheated vapor. Default: conductance.")
        Quantity superheatingConductance,

        @Valid @JsonUnwrapped FanRequest fan,

        @JsonUnwrapped DirtRequest dirt,

        @Schema(description = "Limits for the warnings.") EvaporatingCoilLimitsRequest limits,

        @JsonUnwrapped Options options) {}
