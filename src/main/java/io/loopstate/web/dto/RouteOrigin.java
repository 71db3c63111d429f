package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Where a route to flow and heat starts. */
@Schema(
        description =
                "Where a route to flow and heat starts. evaporatorAirAndElectricalPower: heat rejected as the sum of the "
                        + "evaporator's air-side heat and the electrical power.")
public enum RouteOrigin {
    @JsonProperty("displacement")
    DISPLACEMENT,
    @JsonProperty("condenserAir")
    CONDENSER_AIR,
    @JsonProperty("evaporatorAir")
    EVAPORATOR_AIR,
    @JsonProperty("electricalPower")
    ELECTRICAL_POWER,
    @JsonProperty("evaporatorAirAndElectricalPower")
    EVAPORATOR_AIR_AND_ELECTRICAL_POWER
}
