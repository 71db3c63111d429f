package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Both sides of the dome. */
@Schema(
        description =
                "Both sides of the dome. At a given temperature each side has its own pressure, at a given pressure its own "
                        + "temperature; for a pure refrigerant they are the same.")
public record SaturationReply(
        @Schema(required = true) FluidState bubble,

        @Schema(required = true) FluidState dew,

        @Schema(
                ref = "TemperatureDifference",
                description = "Dew less bubble temperature; where the pressure was given.")
        Quantity temperatureGlide,

        @Schema(ref = "PressureDifference", description = "Bubble less dew pressure; where the temperature was given.")
        Quantity pressureGlide,

        @Schema(
                required = true,
                ref = "SpecificEnergy",
                description = "Enthalpy of the dew less that of the bubble side.")
        Quantity latentHeat,

        @Schema(
                description =
                        "Of a blend: composition of the vapor that forms first at the bubble point; it is what leaks first "
                                + "from a vapor space.")
        List<BlendComponent> firstVapor,

        @Schema(description = "Of a blend: composition of the liquid that forms first at the dew point.")
        List<BlendComponent> firstLiquid,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
