package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** One of several states that satisfy a request. */
@Schema(description = "One of several states that satisfy a request.")
public record Candidate(
        @Schema(required = true) FluidPhase phase,

        @Schema(required = true, ref = "Temperature") Quantity temperature,

        @Schema(required = true, ref = "Pressure") Quantity pressure,

        @Schema(required = true, ref = "Density") Quantity density) {}
