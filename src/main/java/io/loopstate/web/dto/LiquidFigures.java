package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Liquid that a compressor draws in. */
@Schema(description = "Liquid that the compressor draws in.")
public record LiquidFigures(
        @Schema(required = true, description = "Mass of liquid per mass.")
        double massShare,

        @Schema(required = true, description = "Volume of liquid per volume, with saturated liquid's density.")
        double volumeShare,

        @Schema(description = "Vapor quality at the discharge; absent where all of it has evaporated.")
        Double outletQuality) {}
