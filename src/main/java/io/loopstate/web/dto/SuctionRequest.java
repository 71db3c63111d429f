package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The vapor at a compressor's suction. */
@Schema(
        name = "Suction",
        description =
                "The vapor at the compressor's suction: exactly one of pressure and saturationTemperature, and exactly one of "
                        + "temperature, superheat and vaporQuality.")
public record SuctionRequest(
        @Schema(ref = "Pressure") Quantity pressure,

        @Schema(ref = "Temperature", description = "Dew-point temperature instead of the pressure.")
        Quantity saturationTemperature,

        @Schema(ref = "Temperature") Quantity temperature,

        @Schema(ref = "TemperatureDifference", description = "Above the dew point, 0 or more.")
        Quantity superheat,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Of wet vapor, above 0 to 1; it is compressed all the same, with a warning.")
        Double vaporQuality) {}
