package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A refrigerant and two variables of its state. */
@Schema(
        description =
                "A refrigerant and exactly two variables of its state: any two of temperature, pressure, density or "
                        + "specificVolume, specificEnthalpy, specificEntropy, specificInternalEnergy and vaporQuality that fix a state, "
                        + "or pressure or temperature with superheat or subcooling.")
public record StateRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @Schema(ref = "Temperature") Quantity temperature,

        @Schema(ref = "Pressure") Quantity pressure,

        @Schema(ref = "Density") Quantity density,

        @Schema(ref = "SpecificVolume") Quantity specificVolume,

        @Schema(ref = "SpecificEnergy", description = "Counted from the reference state.")
        Quantity specificEnthalpy,

        @Schema(ref = "SpecificEntropy", description = "Counted from the reference state.")
        Quantity specificEntropy,

        @Schema(ref = "SpecificEnergy", description = "Counted from the reference state.")
        Quantity specificInternalEnergy,

        @DecimalMin("0")
        @DecimalMax("1")
        @Schema(description = "Mass of vapor per mass of mixture, 0 to 1; text such as \"20 %\" is understood.")
        Double vaporQuality,

        @Schema(ref = "TemperatureDifference", description = "Above the dew point, 0 or more.")
        Quantity superheat,

        @Schema(ref = "TemperatureDifference", description = "Below the bubble point, 0 or more.")
        Quantity subcooling,

        @Schema(description = "Which state to take where several satisfy the two variables.")
        FluidPhase phase,

        @JsonUnwrapped Options options) {}
