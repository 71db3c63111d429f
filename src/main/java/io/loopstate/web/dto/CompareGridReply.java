package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Two models of a compressor over a grid, and what that rests on. */
@Schema(description = "A rating map and a displacement model over a grid, and what that rests on.")
public record CompareGridReply(
        @Schema(required = true, description = "Points at which both models run.")
        int compared,

        @Schema(required = true, description = "Points at which one does not; their rows say why.")
        int refused,

        @Schema(required = true) CompareDeviation massFlow,

        @Schema(required = true) CompareDeviation electricalPower,

        @Schema(required = true) CompareTemperatureDeviation dischargeTemperature,

        @Schema(required = true, description = "The condensing temperature runs fastest.")
        List<CompareGridRow> rows,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
