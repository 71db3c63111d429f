package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Phase of a state. */
@Schema(
        name = "Phase",
        description =
                "Phase of a state. Above the critical temperature a state is supercritical above the critical pressure "
                        + "and vapor below it; saturated liquid is liquid with vapor quality 0, saturated vapor is vapor with "
                        + "vapor quality 1.")
public enum FluidPhase {
    @JsonProperty("liquid")
    LIQUID,
    @JsonProperty("twoPhase")
    TWO_PHASE,
    @JsonProperty("vapor")
    VAPOR,
    @JsonProperty("supercritical")
    SUPERCRITICAL
}
