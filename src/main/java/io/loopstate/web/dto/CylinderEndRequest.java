package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The end of the demonstration: exactly one of the two. */
@Schema(name = "CylinderEnd", description = "The end of the demonstration: exactly one of the two.")
public record CylinderEndRequest(
        @Schema(ref = "Volume") Quantity volume,

        @Schema(ref = "Pressure") Quantity pressure) {}
