package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Electrical readings at the compressor. */
@Schema(
        name = "Electricity",
        description = "Electrical readings at the compressor: the power, or voltage, current and power factor.")
public record ElectricityRequest(
        @Schema(ref = "Power") Quantity power,

        @Schema(ref = "Voltage", description = "Between lines, or between line and neutral of a single phase.")
        Quantity voltage,

        @Schema(ref = "ElectricCurrent", description = "Per line.")
        Quantity current,

        @Min(1) @Max(3) @Schema(description = "1 or 3. Default: 1.")
        Integer phases,

        @DecimalMin(value = "0", inclusive = false) @DecimalMax("1") @Schema(description = "Above 0 to 1.")
        Double powerFactor) {}
