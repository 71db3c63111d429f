package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The discharge of a compressor. */
@Schema(
        name = "Discharge",
        description =
                "What the compressor works against: pressure or saturationTemperature; and the temperature if it was measured.")
public record DischargeRequest(
        @Schema(ref = "Pressure") Quantity pressure,

        @Schema(ref = "Temperature", description = "Dew-point temperature instead of the pressure.")
        Quantity saturationTemperature,

        @Schema(ref = "Temperature", description = "Measured at the discharge; the efficiencies follow from it.")
        Quantity temperature) {}
