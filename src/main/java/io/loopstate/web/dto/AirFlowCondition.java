package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** In which air a volume flow is counted. */
@Schema(
        name = "AirFlowCondition",
        description =
                "In which air a volume flow is counted. entering: as it enters the coil, what a hood there measures. leaving: as "
                        + "it leaves. standard: standard air of 0.075 lb/ft3 (1.2014 kg/m3), so in truth a mass flow.")
public enum AirFlowCondition {
    @JsonProperty("entering")
    ENTERING,
    @JsonProperty("leaving")
    LEAVING,
    @JsonProperty("standard")
    STANDARD
}
