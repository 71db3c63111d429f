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
        Double machNumber) {}
