package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compression of a flow. */
@Schema(description = "The compression of the whole flow.")
public record CompressionFlow(
        @Schema(required = true, ref = "MassFlow") Quantity massFlow,

        @Schema(required = true, ref = "VolumeFlow") Quantity suctionVolumeFlow,

        @Schema(required = true, ref = "VolumeFlow") Quantity dischargeVolumeFlow,

        @Schema(required = true, ref = "Power") Quantity power,

        @Schema(required = true, ref = "Power", description = "Given off during compression.")
        Quantity heatLoss) {}
