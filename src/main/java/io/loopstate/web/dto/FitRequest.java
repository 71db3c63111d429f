package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Points of a rating table: three lists of the same length, ten or more. */
@Schema(description = "Points of a rating table: three lists of the same length, ten or more.")
public record FitRequest(
        @NotNull
        @Schema(description = "Designation; case, hyphen and the leading R do not matter.", examples = "R-134a")
        String refrigerant,

        @NotNull @Schema(description = "Suction dew temperatures, in temperatureUnit.")
        List<Double> suctionTemperatures,

        @NotNull @Schema(description = "Discharge dew temperatures, in temperatureUnit.")
        List<Double> dischargeTemperatures,

        @NotNull @Schema(description = "One for each pair of temperatures, in any one unit.")
        List<Double> values,

        @NotNull TemperatureScale temperatureUnit,

        @Schema(description = "Order of the coefficients wanted. Default: ahri540.")
        PolynomialOrder coefficientOrder,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
