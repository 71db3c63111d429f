package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** One row of a table. */
@Schema(
        description =
                "One row: bubble and dew point of a table of saturation, or the state of a table of superheated vapor.")
public record TableRow(
        FluidState bubble,

        FluidState dew,

        @Schema(ref = "TemperatureDifference", description = "Dew less bubble temperature; over pressure.")
        Quantity temperatureGlide,

        @Schema(ref = "PressureDifference", description = "Bubble less dew pressure; over temperature.")
        Quantity pressureGlide,

        @Schema(ref = "SpecificEnergy", description = "Enthalpy of the dew less that of the bubble side.")
        Quantity latentHeat,

        FluidState state) {}
