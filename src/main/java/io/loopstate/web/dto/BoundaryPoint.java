package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A point on the phase boundary of a blend. */
@Schema(description = "A point on the phase boundary of a blend.")
public record BoundaryPoint(
        @Schema(required = true, ref = "Temperature") Quantity temperature,

        @Schema(required = true, ref = "Pressure") Quantity pressure) {}
