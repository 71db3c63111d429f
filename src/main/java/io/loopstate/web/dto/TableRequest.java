package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A table of saturation, or of superheated vapor at one pressure. */
@Schema(
        description =
                "A table over exactly one range. Without atPressure a table of saturation over temperature or pressure; with "
                        + "atPressure a table of superheated vapor at that pressure over temperature or superheat.")
public record TableRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @Schema(
                ref = "Pressure",
                description = "The one pressure of a table of superheated vapor, below the critical one.")
        Quantity atPressure,

        TemperatureRange temperature,

        @Schema(description = "For saturation only.") PressureRange pressure,

        @Schema(description = "For superheated vapor only.") SuperheatRange superheat,

        @JsonUnwrapped Options options) {}
