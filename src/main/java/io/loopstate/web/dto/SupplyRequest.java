package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The electrical supply. */
@Schema(
        name = "Supply",
        description = "The electrical supply, for the current: voltage and powerFactor are both needed.")
public record SupplyRequest(
        @Schema(ref = "Voltage", description = "Between lines, or between line and neutral of a single phase.")
        Quantity voltage,

        @Min(1) @Max(3) @Schema(description = "1 or 3. Default: 3.")
        Integer phases,

        @DecimalMin(value = "0", inclusive = false) @DecimalMax("1") @Schema(description = "Above 0 to 1.")
        Double powerFactor) {}
