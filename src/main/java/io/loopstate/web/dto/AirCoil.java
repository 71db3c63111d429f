package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Which coil the air passes. */
@Schema(
        name = "AirCoil",
        description =
                "condenser: heats the air and leaves its water alone; a gas cooler too. evaporator: cools the air and may dry it.")
public enum AirCoil {
    @JsonProperty("condenser")
    CONDENSER,
    @JsonProperty("evaporator")
    EVAPORATOR
}
