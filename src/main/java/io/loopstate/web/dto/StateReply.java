package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** One state and what it rests on. */
@Schema(description = "One state and what it rests on.")
public record StateReply(
        @Schema(required = true) FluidState state,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
