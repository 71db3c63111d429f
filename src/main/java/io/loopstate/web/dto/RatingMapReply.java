package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A rating map at a working point and what that rests on. */
@Schema(description = "A rating map at a working point and what that rests on.")
public record RatingMapReply(
        @Schema(required = true) List<FluidState> points,

        @Schema(required = true) MapFigures map,

        @Schema(description = "Where liquid was given.") EnergyBalanceFigures energyBalance,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
