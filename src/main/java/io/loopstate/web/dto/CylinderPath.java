package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** How the volume of a closed cylinder is changed. */
@Schema(
        name = "CylinderPath",
        description =
                "isothermal: slowly, the walls keep the temperature. adiabatic: quickly and without loss. polytropic: p v^n constant. freeExpansion: into a vacuum, without work and heat.")
public enum CylinderPath {
    @JsonProperty("isothermal")
    ISOTHERMAL,
    @JsonProperty("adiabatic")
    ADIABATIC,
    @JsonProperty("polytropic")
    POLYTROPIC,
    @JsonProperty("freeExpansion")
    FREE_EXPANSION
}
