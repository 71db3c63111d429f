package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What is known of the heat that a condenser has to give off. */
@Schema(
        description =
                "What is known of the heat that a condenser or gas cooler has to give off. Either its own states (condensing, how "
                        + "the refrigerant leaves, and how it arrives: condenserInletTemperature, or evaporating with superheat and "
                        + "isentropicEfficiency), or the balance of the machine (refrigeratingCapacity and compressorPower), or both, "
                        + "which then check each other.")
public record DutyRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @Schema(description = "Level at the inlet of the condenser; above the critical pressure the gas cooler's.")
        LevelRequest condensing,

        @Schema(ref = "Temperature", description = "Of the vapor that arrives, where it was measured.")
        Quantity condenserInletTemperature,

        @Schema(description = "Level of the evaporator, where the vapor that arrives follows from the compression.")
        LevelRequest evaporating,

        @Schema(
                ref = "TemperatureDifference",
                description = "Of the vapor drawn in, above its dew point; taken as useful. Needs evaporating.")
        Quantity superheat,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(
                description =
                        "Work of the compression at constant entropy over the work put into the refrigerant, above 0 to "
                                + "1. Needs evaporating.",
                examples = "0.7")
        Double isentropicEfficiency,

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

        @Schema(ref = "Temperature", description = "Above the critical pressure, where nothing condenses.")
        Quantity gasCoolerOutletTemperature,

        @Schema(description = "Taken as hermetic unless given.")
        CompressorType compressorKind,

        @Schema(ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        @Schema(ref = "Power", description = "Heat taken up in the evaporator.")
        Quantity refrigeratingCapacity,

        @Schema(
                ref = "Power",
                description =
                        "Of a hermetic compressor the electrical power, all of which ends up in the refrigerant; of an open one "
                                + "the power at the shaft, or the electrical power where motorEfficiency is given.")
        Quantity compressorPower,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Shaft power over electrical power, above 0 to 1.")
        Double motorEfficiency,

        @Schema(ref = "Power", description = "Heat that the compressor's shell gives off. Default: none.")
        Quantity shellHeatLoss,

        @Schema(
                ref = "Power",
                description =
                        "Heat that an oil cooler takes before the condenser, as of a screw compressor. Default: none.")
        Quantity oilCoolerHeat,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
