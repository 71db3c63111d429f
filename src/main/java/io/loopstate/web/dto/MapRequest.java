package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compressor by its rating map over dew temperatures. Required: temperatureUnit, power, and massFlow or capacity; ratedSuperheat or ratedReturnGasTemperature; with capacity ratedSubcooling or ratedLiquidTemperature. */
@Schema(
        name = "RatingMap",
        description =
                "A compressor by its rating map over dew temperatures. Required: temperatureUnit, power, and massFlow or capacity; ratedSuperheat or ratedReturnGasTemperature; with capacity ratedSubcooling or ratedLiquidTemperature.")
public record MapRequest(
        @NotNull TemperatureScale temperatureUnit,

        @Schema(description = "Default: ahri540.") PolynomialOrder coefficientOrder,

        PolynomialRequest massFlow,

        @Schema(description = "Instead of massFlow.") PolynomialRequest capacity,

        PolynomialRequest power,

        PolynomialRequest current,

        @Schema(
                ref = "TemperatureDifference",
                description = "Of the rating, for example 20 delta_degF (AHRI 540) or 10 K (EN 12900).")
        Quantity ratedSuperheat,

        @Schema(ref = "Temperature", description = "Of the rating, instead.")
        Quantity ratedReturnGasTemperature,

        @Schema(ref = "TemperatureDifference", description = "Of the rating; default 0 K.")
        Quantity ratedSubcooling,

        @Schema(ref = "Temperature", description = "Of the rating, instead.")
        Quantity ratedLiquidTemperature,

        @DecimalMin(value = "0", inclusive = true)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(
                description =
                        "F of the correction to the actual suction, 0 (none) to 1 (by density); default 0.75, Dabiri and Rice.")
        Double superheatCorrectionFactor,

        @DecimalMin(value = "0", inclusive = true)
        @DecimalMax(value = "1", inclusive = false)
        @Schema(description = "Share of the power that the shell gives off, 0 to below 1. Default: 0.")
        Double heatLossFraction,

        EnvelopeRequest envelope,

        @Schema(description = "Answer outside the envelope all the same, with a warning.")
        Boolean extrapolate) {}
