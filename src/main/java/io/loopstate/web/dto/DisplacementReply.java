package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compressor at its working point and what that rests on. */
@Schema(description = "A compressor at its working point and what that rests on.")
public record DisplacementReply(
        @Schema(required = true) List<FluidState> points,

        @Schema(required = true) MachineFigures machine,

        @Schema(description = "Where the model knows it.") InsideFigures inside,

        @Schema(description = "Of a centrifugal compressor.")
        HeadFigures head,

        @Schema(description = "The liquid that comes in; absent for dry vapor.")
        LiquidFigures liquidAtSuction,

        @Schema(description = "Where liquid was given.") EnergyBalanceFigures energyBalance,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
