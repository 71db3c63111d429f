package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What a nameplate determines and what that rests on. */
@Schema(description = "What a nameplate determines and what that rests on.")
public record NameplateReply(
        @Schema(required = true) FluidState suction,

        @Schema(required = true, description = "Where compression without loss would end.")
        FluidState isentropicDischarge,

        @Schema(required = true) NameplateFigures nameplate,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
