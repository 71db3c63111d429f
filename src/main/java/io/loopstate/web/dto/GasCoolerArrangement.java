package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** How the air passes a gas cooler. */
@Schema(
        name = "GasCoolerArrangement",
        description = "counterFlow: many rows, the air meets the coldest refrigerant first. crossFlow: one row.")
public enum GasCoolerArrangement {
    @JsonProperty("counterFlow")
    COUNTER_FLOW,
    @JsonProperty("crossFlow")
    CROSS_FLOW
}
