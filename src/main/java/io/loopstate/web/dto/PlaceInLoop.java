package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Places around the loop, in the direction of flow. */
@Schema(
        description =
                "A place around the loop. isentropicCompressorOutlet is no place: it is where compression without loss "
                        + "would end. Above the critical pressure the condenser is a gas cooler.")
public enum PlaceInLoop {
    @JsonProperty("compressorInlet")
    COMPRESSOR_INLET,
    @JsonProperty("compressorOutlet")
    COMPRESSOR_OUTLET,
    @JsonProperty("condenserInlet")
    CONDENSER_INLET,
    @JsonProperty("condenserOutlet")
    CONDENSER_OUTLET,
    @JsonProperty("gasCoolerInlet")
    GAS_COOLER_INLET,
    @JsonProperty("gasCoolerOutlet")
    GAS_COOLER_OUTLET,
    @JsonProperty("valveInlet")
    VALVE_INLET,
    @JsonProperty("evaporatorInlet")
    EVAPORATOR_INLET,
    @JsonProperty("evaporatorOutlet")
    EVAPORATOR_OUTLET,
    @JsonProperty("isentropicCompressorOutlet")
    ISENTROPIC_COMPRESSOR_OUTLET
}
