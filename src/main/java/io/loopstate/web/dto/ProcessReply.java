package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** One compression and what it rests on. */
@Schema(description = "One compression and what it rests on.")
public record ProcessReply(
        @Schema(
                required = true,
                description = "compressorInlet, compressorOutlet, and where compression without loss would end.")
        List<FluidState> points,

        @Schema(required = true) CompressionFigures compression,

        @Schema(
                description =
                        "Reversible compression at the suction's temperature: the least work there is. Absent where the fluid "
                                + "has no such state.")
        IsothermalFigures isothermal,

        @Schema(description = "Formulas of the ideal gas, for class; nothing else here comes from them.")
        IdealGasFigures idealGas,

        @Schema(description = "The liquid that comes in; absent for dry vapor.")
        LiquidFigures liquidAtSuction,

        @Schema(description = "Of the whole machine; absent without a flow.")
        CompressionFlow flow,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
