package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The compressor as measured between suction and discharge line. */
@Schema(description = "The compressor as measured between suction and discharge line.")
public record MeasuredCompression(
        @Schema(
                required = true,
                description =
                        "As measured, also where the readings make it impossible, which a warning says; of a hermetic "
                                + "compressor it includes the motor.")
        double isentropicEfficiency,

        @Schema(required = true, ref = "SpecificEnergy") Quantity isentropicWork,

        @Schema(required = true, ref = "SpecificEnergy", description = "Enthalpy rise and shell loss.")
        Quantity work) {}
