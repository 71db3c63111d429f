package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What takes up the heat of the motor. */
@Schema(
        name = "MotorCooling",
        description =
                "What takes up the heat of the motor: the suction vapor before it is compressed, the vapor after compression (a shell at discharge pressure), or the surroundings.")
public enum MotorHeatSink {
    @JsonProperty("suctionGas")
    SUCTION_GAS,
    @JsonProperty("dischargeGas")
    DISCHARGE_GAS,
    @JsonProperty("surroundings")
    SURROUNDINGS
}
