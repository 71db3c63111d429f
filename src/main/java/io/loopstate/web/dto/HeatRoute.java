package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Flow and heat by one route. */
@Schema(description = "Flow and heat by one of the independent routes that the readings open.")
public record HeatRoute(
        @Schema(required = true) RouteOrigin name,

        @Schema(required = true) RouteBound bound,

        @Schema(ref = "MassFlow") Quantity massFlow,

        @Schema(ref = "Power") Quantity refrigeratingCapacity,

        @Schema(ref = "Power") Quantity compressorPower,

        @Schema(ref = "Power") Quantity heatRejected,

        @Schema(required = true, description = "What the route rests on beside the readings.")
        List<String> assumptions) {}
