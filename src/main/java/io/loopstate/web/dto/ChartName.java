package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;

/** The pictures that a cycle can be drawn as. */
public enum ChartName {
    @JsonProperty("pressureEnthalpy")
    PRESSURE_ENTHALPY,
    @JsonProperty("temperatureEntropy")
    TEMPERATURE_ENTROPY
}
