package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A zone of an evaporating coil. */
@Schema(name = "EvaporatingCoilZoneName", description = "What the refrigerant does in a zone of an evaporating coil.")
public enum EvaporatingCoilZoneName {
    @JsonProperty("boiling")
    BOILING,
    @JsonProperty("superheating")
    SUPERHEATING
}
