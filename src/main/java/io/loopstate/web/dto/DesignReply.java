package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The points of a cycle from design conditions and what the cycle does. */
@Schema(description = "The points of the cycle in the direction of flow, and what the cycle does.")
public record DesignReply(
        @Schema(
                required = true,
                description = "States around the loop in the direction of flow, then the isentropic outlet.")
        List<FluidState> points,

        @Schema(required = true) LevelTemperatures evaporating,

        @Schema(description = "Absent above the critical pressure.")
        LevelTemperatures condensing,

        @Schema(required = true) Performance performance,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
