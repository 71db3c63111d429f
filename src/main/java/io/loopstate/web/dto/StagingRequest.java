package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Two stages with cooling between them, beside one. Required: suction, the discharge, intercoolerTemperature, and isentropicEfficiency or polytropicIndex. Without intermediatePressure that of least work is taken. */
@Schema(
        description =
                "Two stages with cooling between them, beside one. Required: suction, the discharge, intercoolerTemperature, and isentropicEfficiency or polytropicIndex. Without intermediatePressure that of least work is taken.")
public record StagingRequest(
        @NotNull
        @Schema(description = "Designation; case, hyphen and the leading R do not matter.", examples = "R-134a")
        String refrigerant,

        @NotNull @Valid SuctionRequest suction,

        DischargePressureRequest discharge,

        @Schema(description = "Absolute discharge over suction pressure, above 1, instead of the discharge pressure.")
        Double pressureRatio,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(description = "Of each stage, above 0 to 1.")
        Double isentropicEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(description = "Of the second stage, where it differs.")
        Double highStageIsentropicEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "10", inclusive = true)
        @Schema(description = "n of both stages in cooled cylinders, instead of an efficiency.")
        Double polytropicIndex,

        @NotNull
        @Schema(
                ref = "Temperature",
                description = "To which the vapor is cooled between the stages, at the dew point at the latest.")
        Quantity intercoolerTemperature,

        @Schema(ref = "Pressure", description = "Between suction and discharge.")
        Quantity intermediatePressure,

        @Schema(ref = "MassFlow", description = "For powers.")
        Quantity massFlow,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
