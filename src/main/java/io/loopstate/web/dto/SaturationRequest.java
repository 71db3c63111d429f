package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A refrigerant and a temperature or a pressure below the critical point. */
@Schema(description = "A refrigerant and exactly one of temperature and pressure, below the critical point.")
public record SaturationRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @Schema(ref = "Temperature") Quantity temperature,

        @Schema(ref = "Pressure") Quantity pressure,

        @JsonUnwrapped Options options) {}
