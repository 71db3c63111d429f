package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A point along the path of a closed cylinder. */
@Schema(description = "A point along the path of a closed cylinder.")
public record CylinderPoint(
        @Schema(required = true, ref = "Volume") Quantity volume,

        @Schema(required = true, ref = "Pressure") Quantity absolutePressure,

        @Schema(required = true, ref = "Pressure") Quantity gaugePressure,

        @Schema(required = true, ref = "Temperature") Quantity temperature,

        @Schema(required = true, ref = "SpecificVolume") Quantity specificVolume,

        @Schema(required = true) FluidPhase phase) {}
