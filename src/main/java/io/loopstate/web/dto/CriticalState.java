package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The critical point of the equation of state. */
@Schema(name = "CriticalPoint", description = "The critical point of the equation of state.")
public record CriticalState(
        @Schema(required = true, ref = "Temperature") Quantity temperature,

        @Schema(required = true, ref = "Pressure") Quantity pressure,

        @Schema(required = true, ref = "Density") Quantity density) {}
