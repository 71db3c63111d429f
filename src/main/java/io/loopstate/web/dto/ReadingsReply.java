package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What readings determine. */
@Schema(description = "What the readings determine; what they do not is absent.")
public record ReadingsReply(
        @Schema(required = true, description = "States at the places that were read, in the direction of flow.")
        List<FluidState> points,

        @Schema(required = true) LevelTemperatures evaporating,

        @Schema(description = "Absent above the critical pressure.")
        LevelTemperatures condensing,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Suction line less dew point. Zero or less means liquid at the compressor.")
        Quantity superheat,

        @Schema(
                ref = "TemperatureDifference",
                description = "At the evaporator's outlet, against the suction pressure.")
        Quantity evaporatorSuperheat,

        @Schema(
                ref = "TemperatureDifference",
                description =
                        "Bubble point at the liquid line pressure less liquid line. Zero or less means flash gas.")
        Quantity subcooling,

        @Schema(required = true, description = "Whether the discharge pressure stood in for that of the liquid line.")
        boolean liquidLinePressureAssumed,

        @Schema(ref = "TemperatureDifference", description = "Between the liquid and its bubble point at the valve.")
        Quantity flashMargin,

        @Schema(ref = "TemperatureDifference", description = "Condensing midpoint over outdoor air.")
        Quantity condensingOverAmbient,

        @Schema(
                ref = "TemperatureDifference",
                description = "Air entering the evaporator over its midpoint temperature.")
        Quantity evaporatorTemperatureDifference,

        @Schema(required = true, description = "Absolute discharge over suction pressure.")
        double pressureRatio,

        MeasuredCompression compression,

        @Schema(required = true) MeasuredPerformance performance,

        @Schema(required = true, description = "Each independent route to flow and heat.")
        List<HeatRoute> routes,

        @Schema(required = true, description = "Each pair of routes that reach the same heat.")
        List<HeatBalance> balances,

        @Schema(ref = "Density", description = "Taken for dry air entering the condenser.")
        Quantity condenserAirDensity,

        @Schema(ref = "Density", description = "Taken for dry air entering the evaporator.")
        Quantity evaporatorAirDensity,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
