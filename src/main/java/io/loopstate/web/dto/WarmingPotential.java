package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Global warming potential by one assessment. */
@Schema(description = "Global warming potential by one assessment.")
public record WarmingPotential(
        @Schema(required = true, description = "Relative to carbon dioxide, by mass.")
        double value,

        @Schema(required = true, examples = "AR6") String assessment,

        @Schema(required = true) int horizonYears,

        @Schema(required = true, description = "Where the value stands, and whether it was remembered.")
        String source) {}
