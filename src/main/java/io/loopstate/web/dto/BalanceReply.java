package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A machine in steady state. */
@Schema(
        description =
                "A machine in steady state between its two airs, and beside it each what-if. Fans are counted in neither power nor "
                        + "coefficient of performance.")
public record BalanceReply(
        @Schema(
                required = true,
                description =
                        "Around the loop: inlet and outlet of the compressor, outlet of the condenser, inlet and outlet "
                                + "of the evaporator.")
        List<FluidState> points,

        @Schema(required = true) LevelTemperatures evaporating,

        @Schema(required = true) LevelTemperatures condensing,

        @Schema(required = true, ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        @Schema(required = true) EnergyBalanceFigures energyBalance,

        @Schema(required = true, description = "Heat rejected over refrigerating capacity.")
        double heatRejectionFactor,

        @Schema(required = true) BalanceCompressor compressor,

        @Schema(required = true) BalanceCondenser condenser,

        @Schema(required = true) BalanceEvaporator evaporator,

        @Schema(description = "With the fans; where a fan power is given.")
        SystemOfMachine system,

        @Schema(description = "In the order of the members of whatIf; only where asked for.")
        List<WhatIfRow> whatIfs,

        @Schema(description = "The working of the base case; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
