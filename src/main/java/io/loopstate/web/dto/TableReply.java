package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A table and what it rests on. */
@Schema(description = "A table and what it rests on.")
public record TableReply(
        @Schema(description = "Saturated liquid at the pressure of a table of superheated vapor.")
        FluidState bubble,

        @Schema(description = "Saturated vapor at the pressure of a table of superheated vapor.")
        FluidState dew,

        @Schema(required = true, description = "Ascending.") @Rows
        List<TableRow> rows,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
