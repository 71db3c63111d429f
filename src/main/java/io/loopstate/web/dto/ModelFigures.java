package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compressor by one model. */
@Schema(description = "A compressor by one model.")
public record ModelFigures(
        @Schema(required = true, ref = "MassFlow") Quantity massFlow,

        @Schema(required = true, ref = "Power") Quantity electricalPower,

        @Schema(required = true, ref = "Temperature") Quantity dischargeTemperature,

        @Schema(required = true, ref = "Power") Quantity heatLoss,

        @Schema(required = true, description = "Suction vapor drawn in over the displacement of the machine.")
        double volumetricEfficiency,

        @Schema(required = true, description = "Isentropic over electrical power.")
        double overallEfficiency) {}
