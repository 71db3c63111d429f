package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Dew temperatures that the map holds for. */
@Schema(name = "Envelope", description = "Dew temperatures that the map holds for.")
public record EnvelopeRequest(
        @Schema(ref = "Temperature") Quantity minSuctionTemperature,

        @Schema(ref = "Temperature") Quantity maxSuctionTemperature,

        @Schema(ref = "Temperature") Quantity minDischargeTemperature,

        @Schema(ref = "Temperature") Quantity maxDischargeTemperature) {}
