package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A closed cylinder of air or of any other fluid, compressed or expanded. Required: initial with its three members, end with one of two, and path; polytropicIndex with a polytropic path. */
@Schema(
        description =
                "A closed cylinder of air or of any other fluid, compressed or expanded. Required: initial with its three members, end with one of two, and path; polytropicIndex with a polytropic path.")
public record CylinderRequest(
        @NotNull @Schema(description = "Designation; case, hyphen and the leading R do not matter.", examples = "Air")
        String refrigerant,

        @NotNull CylinderStartRequest initial,

        @NotNull CylinderEndRequest end,

        @NotNull CylinderPath path,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "10", inclusive = true)
        @Schema(description = "The n of p v^n; 1 is isothermal for an ideal gas.")
        Double polytropicIndex,

        @Min(2) @Max(501) @Schema(description = "Points along the path, for a plot. Default: 11.")
        Integer points,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
