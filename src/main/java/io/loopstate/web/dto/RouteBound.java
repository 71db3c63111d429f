package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** On which side of the true figures a route's may lie. */
@Schema(description = "Whether the figures are a bound because something was not measured.")
public enum RouteBound {
    @JsonProperty("none")
    NONE,
    @JsonProperty("lower")
    LOWER,
    @JsonProperty("upper")
    UPPER
}
