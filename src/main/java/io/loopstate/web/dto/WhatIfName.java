package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What is different in a row. */
@Schema(name = "WhatIfName", description = "What is different from the base case.")
public enum WhatIfName {
    @JsonProperty("dirtyCondenser")
    DIRTY_CONDENSER,
    @JsonProperty("hotDay")
    HOT_DAY,
    @JsonProperty("altitude")
    ALTITUDE,
    @JsonProperty("lowIndoorAirflow")
    LOW_INDOOR_AIRFLOW,
    @JsonProperty("condenserFanSlow")
    CONDENSER_FAN_SLOW,
    @JsonProperty("condenserFanOff")
    CONDENSER_FAN_OFF,
    @JsonProperty("otherRefrigerant")
    OTHER_REFRIGERANT
}
