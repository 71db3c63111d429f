package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** How the air passes the zones of a condensing coil. */
@Schema(
        name = "AirArrangement",
        description =
                "How the air passes the zones of a condensing coil. crossFlow: side by side, every zone meets entering air. "
                        + "series: all air meets the subcooling zone first, then the condensing one, then the hot vapor.")
public enum AirArrangement {
    @JsonProperty("crossFlow")
    CROSS_FLOW,
    @JsonProperty("series")
    SERIES
}
