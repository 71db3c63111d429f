package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Moist air from two of its variables. */
@Schema(description = "Moist air from two of its variables.")
public record MoistAirReply(
        @Schema(required = true) MoistAirState air,

        @Schema(required = true) AirHeatFactors factors,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) AirBasis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
