package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** One compression from a suction state to a discharge pressure. */
@Schema(
        description =
                "One compression of any refrigerant or of air. Required: suction, the discharge (its pressure, its "
                        + "saturationTemperature, or pressureRatio), and exactly one of isentropicEfficiency, "
                        + "polytropicEfficiency, polytropicIndex and discharge.temperature. With massFlow or "
                        + "suctionVolumeFlow the reply holds the power.")
public record ProcessRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter. Air is one as well.",
                examples = "R-134a")
        String refrigerant,

        @NotNull @Valid SuctionRequest suction,

        DischargeRequest discharge,

        @Schema(description = "Absolute discharge over suction pressure, above 1, instead of the discharge pressure.")
        Double pressureRatio,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Work at constant entropy over work, above 0 to 1; 1 is compression without loss.")
        Double isentropicEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Of each small stage of the compression, above 0 to 1.")
        Double polytropicEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("10")
        @Schema(
                description =
                        "The n of p v^n = constant, with the real specific volume. Below the isentropic index the cylinder "
                                + "is cooled; 1 is isothermal for an ideal gas.")
        Double polytropicIndex,

        @DecimalMin("0")
        @DecimalMax(value = "1", inclusive = false)
        @Schema(
                description =
                        "Share of the work that the shell gives off, 0 to below 1; not with polytropicIndex, which "
                                + "fixes the heat. Default: 0.")
        Double heatLossFraction,

        @Schema(ref = "MassFlow", description = "At most one of this and suctionVolumeFlow is given.")
        Quantity massFlow,

        @Schema(ref = "VolumeFlow", description = "Vapor drawn in, at the suction's state.")
        Quantity suctionVolumeFlow,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
