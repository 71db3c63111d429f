package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What happens in a closed cylinder and what that rests on. */
@Schema(description = "What happens in a closed cylinder and what that rests on.")
public record CylinderReply(
        @Schema(required = true) FluidState start,

        @Schema(required = true) FluidState end,

        @Schema(required = true) CylinderFigures cylinder,

        @Schema(required = true) CylinderIdealGas idealGas,

        @Schema(required = true, description = "In order; only the ends where a gas is let into a vacuum.")
        List<CylinderPoint> points,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
