package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Two stages beside one and what that rests on. */
@Schema(description = "Two stages beside one and what that rests on.")
public record StagingReply(
        @Schema(required = true) StagingFigures staging,

        @Schema(required = true) StageFigures lowStage,

        @Schema(required = true) StageFigures highStage,

        @Schema(required = true, description = "The same in one stage, with the efficiency or index of the first.")
        StageFigures singleStage,

        @Schema(required = true, description = "At the intermediate pressure of least work.")
        IntermediateFigures optimum,

        @Schema(required = true, description = "At the square root of suction times discharge pressure.")
        IntermediateFigures squareRootRule,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
