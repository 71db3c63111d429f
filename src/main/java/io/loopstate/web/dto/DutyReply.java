package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The heat that a condenser has to give off. */
@Schema(description = "The heat that a condenser or gas cooler has to give off.")
public record DutyReply(
        @Schema(description = "Inlet and outlet of the condenser, where its states are known.")
        List<FluidState> points,

        @Schema(description = "Absent above the critical pressure.")
        LevelTemperatures condensing,

        @Schema(ref = "SpecificEnergy", description = "Given off in the condenser per mass of refrigerant.")
        Quantity heatRejectionPerMass,

        @Schema(description = "The same by what the refrigerant does.")
        RejectedHeat heatRejection,

        @Schema(ref = "SpecificEnergy", description = "Taken up in the evaporator, where the compression is known.")
        Quantity refrigeratingEffect,

        @Schema(ref = "SpecificEnergy", description = "Put into the refrigerant, where the compression is known.")
        Quantity compressorWork,

        @Schema(required = true) DutyHeat heat,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
