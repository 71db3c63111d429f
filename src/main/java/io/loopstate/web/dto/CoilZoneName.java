package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A zone of a condensing coil. */
@Schema(name = "CoilZoneName", description = "What the refrigerant does in a zone of a condensing coil.")
public enum CoilZoneName {
    @JsonProperty("desuperheating")
    DESUPERHEATING,
    @JsonProperty("condensing")
    CONDENSING,
    @JsonProperty("subcooling")
    SUBCOOLING
}
