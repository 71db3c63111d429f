package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compressor of known displacement at a working point. */
@Schema(
        description =
                "A compressor of known displacement at a working point. Required: suction, the discharge (its pressure, its "
                        + "saturationTemperature, or pressureRatio) and machine. With liquid the reply holds capacity, heat "
                        + "rejected and the energy balance; with supply the current.")
public record DisplacementRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @NotNull @Valid SuctionRequest suction,

        DischargePressureRequest discharge,

        @Schema(description = "Absolute discharge over suction pressure, above 1, instead of the discharge pressure.")
        Double pressureRatio,

        @NotNull @Valid MachineRequest machine,

        @Schema(description = "Where the capacity is wanted.")
        LiquidRequest liquid,

        @Schema(
                ref = "Temperature",
                description =
                        "At the suction pressure; what the suction line adds to it is no useful capacity. Default: the suction itself.")
        Quantity evaporatorOutletTemperature,

        @Valid SupplyRequest supply,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
