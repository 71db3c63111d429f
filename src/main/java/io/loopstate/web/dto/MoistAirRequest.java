package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Two variables of moist air. */
@Schema(
        description =
                "Two variables of moist air at the pressure of the atmosphere. Any two do but dewPoint with humidityRatio and "
                        + "wetBulb with specificEnthalpy, which rise and fall together.")
public record MoistAirRequest(
        @Schema(ref = "Temperature", description = "-100 to 200 degC.")
        Quantity dryBulb,

        @Schema(ref = "Temperature", description = "Thermodynamic wet bulb; a sling psychrometer comes close.")
        Quantity wetBulb,

        @Schema(description = "0 to 1; text such as \"50 %\" is understood.", examples = "0.5")
        Double relativeHumidity,

        @Schema(ref = "Temperature", description = "Below freezing the frost point.")
        Quantity dewPoint,

        @Schema(ref = "HumidityRatio", description = "Water vapor per dry air.")
        Quantity humidityRatio,

        @Schema(ref = "SpecificEnergy", description = "Per dry air, counted from the enthalpyDatum.")
        Quantity specificEnthalpy,

        @Schema(description = "Default: zeroCelsius.") AirEnthalpyDatum enthalpyDatum,

        @JsonUnwrapped AirOptions options) {}
