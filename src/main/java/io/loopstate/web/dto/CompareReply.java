package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A rating map and a displacement model of the same compressor, and what that rests on. */
@Schema(description = "A rating map and a displacement model of the same compressor, and what that rests on.")
public record CompareReply(
        @Schema(required = true) ModelFigures map,

        @Schema(required = true) ModelFigures machine,

        @Schema(required = true) CompareFigures difference,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
