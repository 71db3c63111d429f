package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** How the atmospheric pressure is known. */
@Schema(
        description =
                "standard: nothing was said, the standard atmosphere at sea level. altitude: the standard atmosphere at "
                        + "the altitude given. barometer: the atmospheric pressure given.")
public enum AtmosphereOrigin {
    @JsonProperty("standard")
    STANDARD,
    @JsonProperty("altitude")
    ALTITUDE,
    @JsonProperty("barometer")
    BAROMETER
}
