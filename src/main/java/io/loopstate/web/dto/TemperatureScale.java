package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** In what a table counts its temperatures. */
@Schema(name = "TemperatureScale", description = "In what the table counts its temperatures.")
public enum TemperatureScale {
    @JsonProperty("degC")
    CELSIUS,
    @JsonProperty("degF")
    FAHRENHEIT
}
