package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The pressure that a compressor works against. */
@Schema(
        name = "DischargePressure",
        description = "The pressure that the compressor works against: pressure or saturationTemperature.")
public record DischargePressureRequest(
        @Schema(ref = "Pressure") Quantity pressure,

        @Schema(ref = "Temperature", description = "Dew-point temperature instead of the pressure.")
        Quantity saturationTemperature) {}
