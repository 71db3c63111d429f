package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** An air-cooled condensing coil. */
@Schema(
        description =
                "An air-cooled condensing coil. With condensing, measured, its conductance is sought; with conductance or "
                        + "zoneConductances the condensing level is. Required besides: entering.dryBulb, airflow, how the refrigerant "
                        + "arrives (condenserInletTemperature or inletSuperheat) and leaves, and its massFlow or heat; with condensing "
                        + "the dry bulb of the leaving air may stand for the heat.")
public record CoilRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @Schema(description = "Air before the coil; dryBulb is required.")
        AirReadings entering,

        @Schema(description = "At full fan speed; as the air enters, as standard air or as a mass flow.")
        AirFlowRequest airflow,

        @Schema(description = "Default: crossFlow.") AirArrangement arrangement,

        @Schema(ref = "Temperature", description = "Of the vapor that arrives.")
        Quantity condenserInletTemperature,

        @Schema(ref = "TemperatureDifference", description = "Of the vapor that arrives, above its dew point.")
        Quantity inletSuperheat,

        @Schema(
                ref = "TemperatureDifference",
                description = "Below the bubble point at the outlet of the condenser, 0 or more.")
        Quantity subcooling,

        @Schema(ref = "Temperature", description = "Not above the bubble point.")
        Quantity condenserOutletTemperature,

        @DecimalMin("0")
        @DecimalMax("1")
        @Schema(description = "Vapor quality where condensing is not complete, 0 to 1.")
        Double condenserOutletQuality,

        @Schema(ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        @Schema(ref = "Power", description = "To be given off.")
        Quantity heat,

        @Schema(ref = "Temperature", description = "Dry bulb of the leaving air; with condensing only.")
        Quantity leavingDryBulb,

        @Schema(description = "Measured; the conductance is then sought.")
        LevelRequest condensing,

        @Schema(ref = "ThermalConductance", description = "Of the clean coil at full airflow, the same in every zone.")
        Quantity conductance,

        ZoneConductances zoneConductances,

        @Valid @JsonUnwrapped FanRequest fan,

        @JsonUnwrapped DirtRequest dirt,

        @Schema(description = "Limits for the warnings.") CoilLimitsRequest limits,

        @JsonUnwrapped Options options) {}
