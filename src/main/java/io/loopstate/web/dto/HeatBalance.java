package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Two routes to the same heat rejected. */
@Schema(description = "Two routes to the same heat rejected.")
public record HeatBalance(
        @Schema(required = true) RouteOrigin first,

        @Schema(required = true) RouteOrigin second,

        @Schema(required = true, ref = "Power") Quantity firstHeat,

        @Schema(required = true, ref = "Power") Quantity secondHeat,

        @Schema(required = true, description = "First less second, over the second.")
        double difference) {}
