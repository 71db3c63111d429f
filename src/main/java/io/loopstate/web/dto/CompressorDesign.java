package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What moves the vapor in a compressor. */
@Schema(name = "CompressorDesign", description = "What moves the vapor.")
public enum CompressorDesign {
    @JsonProperty("reciprocating")
    RECIPROCATING,
    @JsonProperty("rotary")
    ROTARY,
    @JsonProperty("scroll")
    SCROLL,
    @JsonProperty("screw")
    SCREW,
    @JsonProperty("centrifugal")
    CENTRIFUGAL
}
