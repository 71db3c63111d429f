package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What a nameplate states at a rating point. */
@Schema(
        description =
                "What a nameplate or catalog states at a rating point. Required: suction, the discharge, and exactly one of "
                        + "refrigeratingCapacity (with liquid) and massFlow. displacement gives the volumetric efficiency, "
                        + "volumetricEfficiency the displacement; a power gives the isentropic efficiencies.")
public record NameplateRequest(
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

        @Schema(description = "Where the capacity is wanted.")
        LiquidRequest liquid,

        @Schema(
                ref = "Temperature",
                description =
                        "At the suction pressure; what the suction line adds to it is no useful capacity. Default: the suction itself.")
        Quantity evaporatorOutletTemperature,

        @Schema(ref = "Power") Quantity refrigeratingCapacity,

        @Schema(ref = "MassFlow") Quantity massFlow,

        @Schema(ref = "VolumeFlow", description = "At most one of this and volumetricEfficiency is given.")
        Quantity displacement,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(description = "Suction vapor drawn in over displacement, above 0 to 1.")
        Double volumetricEfficiency,

        @Schema(ref = "Power", description = "At the terminals; at most one of this and shaftPower is given.")
        Quantity electricalPower,

        @Schema(ref = "Power") Quantity shaftPower,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(description = "From terminals to shaft, above 0 to 1; gives the one power from the other.")
        Double motorEfficiency,

        @Schema(ref = "Frequency", description = "For the displacement per revolution.")
        Quantity speed,

        @Min(1) @Max(64) @Schema(description = "Default: 1.")
        Integer cylinders,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "10", inclusive = true)
        @Schema(description = "Gives bore and stroke of a reciprocating compressor, with speed.")
        Double strokeToBoreRatio,

        @Schema(description = "Whether both faces of the pistons compress.")
        Boolean doubleActing,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
