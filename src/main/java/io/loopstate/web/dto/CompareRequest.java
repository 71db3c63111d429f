package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A rating map and a displacement model of the same compressor at a working point. Required: suction, the discharge, map and machine. */
@Schema(
        description =
                "A rating map and a displacement model of the same compressor at a working point. Required: suction, the discharge, map and machine.")
public record CompareRequest(
        @NotNull
        @Schema(description = "Designation; case, hyphen and the leading R do not matter.", examples = "R-134a")
        String refrigerant,

        @NotNull @Valid SuctionRequest suction,

        DischargePressureRequest discharge,

        @Schema(description = "Absolute discharge over suction pressure, above 1, instead of the discharge pressure.")
        Double pressureRatio,

        @NotNull @Valid MapRequest map,

        @NotNull @Valid MachineRequest machine,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
