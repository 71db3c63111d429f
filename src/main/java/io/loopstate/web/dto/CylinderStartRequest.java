package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The gas in a closed cylinder at the start. */
@Schema(name = "CylinderStart", description = "The gas in a closed cylinder at the start.")
public record CylinderStartRequest(
        @Schema(ref = "Pressure", description = "A gauge reading counts from the atmosphere of the place.")
        Quantity pressure,

        @Schema(ref = "Temperature") Quantity temperature,

        @Schema(ref = "Volume") Quantity volume) {}
