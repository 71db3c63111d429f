package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Head of a centrifugal compressor. */
@Schema(description = "Head of a centrifugal compressor.")
public record HeadFigures(
        @Schema(required = true, ref = "SpecificEnergy", description = "At constant entropy between the ports.")
        Quantity neededHead,

        @Schema(ref = "SpecificEnergy", description = "Of all stages, where headCoefficient was given.")
        Quantity availableHead,

        @Schema(required = true, description = "Of each stage.")
        double neededHeadCoefficient,

        @Schema(required = true, ref = "Speed") Quantity tipSpeed,

        @Schema(description = "Tip speed over the speed of sound at the suction.")
        Double machNumber,

        @Schema(description = "V / (u D^2), where a head-flow curve was given.")
        Double flowCoefficient,

        @Schema(description = "At that flow, from the curve.")
        Double isentropicEfficiency,

        @Schema(ref = "VolumeFlow", description = "Below which the machine surges at this speed.")
        Quantity surgeVolumeFlow,

        @Schema(ref = "VolumeFlow", description = "At which the machine chokes at this speed.")
        Quantity chokeVolumeFlow) {}
