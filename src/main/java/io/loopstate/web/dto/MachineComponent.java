package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A component of a machine. */
@Schema(name = "MachineComponent", description = "A component of a machine.")
public enum MachineComponent {
    @JsonProperty("compressor")
    COMPRESSOR,
    @JsonProperty("condenser")
    CONDENSER,
    @JsonProperty("evaporator")
    EVAPORATOR
}
