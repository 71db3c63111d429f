package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compressor by its rating map at a working point. Required: suction, the discharge and map. With liquid the reply holds capacity, heat rejected and the energy balance. */
@Schema(
        description =
                "A compressor by its rating map at a working point. Required: suction, the discharge and map. With liquid the reply holds capacity, heat rejected and the energy balance.")
public record RatingMapRequest(
        @NotNull
        @Schema(description = "Designation; case, hyphen and the leading R do not matter.", examples = "R-134a")
        String refrigerant,

        @NotNull @Valid SuctionRequest suction,

        DischargePressureRequest discharge,

        @Schema(description = "Absolute discharge over suction pressure, above 1, instead of the discharge pressure.")
        Double pressureRatio,

        @NotNull @Valid MapRequest map,

        @Schema(description = "Where the capacity is wanted.")
        LiquidRequest liquid,

        @Schema(
                ref = "Temperature",
                description =
                        "At the suction pressure; what the suction line adds to it is no useful capacity. Default: the suction itself.")
        Quantity evaporatorOutletTemperature,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
