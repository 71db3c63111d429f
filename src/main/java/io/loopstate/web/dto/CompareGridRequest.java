package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A rating map and a displacement model of the same compressor over a grid of levels. */
@Schema(
        description =
                "A rating map and a displacement model of the same compressor over a grid of levels, at most 400 points. Required: "
                        + "evaporating, condensing, suctionSuperheat or suctionTemperature, map and machine.")
public record CompareGridRequest(
        @NotNull
        @Schema(description = "Designation; case, hyphen and the leading R do not matter.", examples = "R-134a")
        String refrigerant,

        @NotNull @Valid @Schema(description = "Dew temperatures at the suction.")
        TemperatureRange evaporating,

        @NotNull @Valid @Schema(description = "Dew temperatures at the discharge.")
        TemperatureRange condensing,

        @Schema(ref = "TemperatureDifference", description = "At every point, 0 or more.")
        Quantity suctionSuperheat,

        @Schema(ref = "Temperature", description = "Of the vapor drawn in, at every point.")
        Quantity suctionTemperature,

        @NotNull @Valid MapRequest map,

        @NotNull @Valid MachineRequest machine,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
