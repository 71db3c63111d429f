package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** From where the enthalpy of moist air is counted. */
@Schema(
        name = "AirEnthalpyDatum",
        description =
                "From where the enthalpy of moist air is counted. zeroCelsius: dry air at 0 degC, as in SI charts. "
                        + "zeroFahrenheit: dry air at 0 degF, as in inch-pound charts. Liquid water at 0 degC has none in both.")
public enum AirEnthalpyDatum {
    @JsonProperty("zeroCelsius")
    ZERO_CELSIUS,
    @JsonProperty("zeroFahrenheit")
    ZERO_FAHRENHEIT
}
