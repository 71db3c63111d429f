package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Design conditions of a single-stage cycle. */
@Schema(
        description =
                "Design conditions of a single-stage vapor-compression cycle. Required: evaporating and condensing, how the "
                        + "vapor leaves the evaporator (superheat, evaporatorOutletTemperature or evaporatorOutletQuality), how the "
                        + "liquid leaves the condenser (subcooling, condenserOutletTemperature or condenserOutletQuality; above the "
                        + "critical pressure gasCoolerOutletTemperature), and isentropicEfficiency. Pressure drops, line heat and a "
                        + "size are optional.")
public record DesignRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @NotNull @Schema(description = "Level at the outlet of the evaporator.")
        LevelRequest evaporating,

        @NotNull
        @Schema(description = "Level at the inlet of the condenser; above the critical pressure the gas cooler's.")
        LevelRequest condensing,

        @Schema(
                ref = "TemperatureDifference",
                description = "Useful superheat: above the dew point at the outlet of the evaporator, 0 or more.")
        Quantity superheat,

        @Schema(ref = "Temperature", description = "Not below the dew point.")
        Quantity evaporatorOutletTemperature,

        @DecimalMin("0")
        @DecimalMax("1")
        @Schema(description = "Vapor quality where the evaporator is flooded, 0 to 1.")
        Double evaporatorOutletQuality,

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

        @NotNull
        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(
                description =
                        "Work of the compression at constant entropy over the work put into the refrigerant, above 0 to "
                                + "1; text such as \"70 %\" is understood.",
                examples = "0.7")
        Double isentropicEfficiency,

        @Schema(description = "Taken as open unless given.") CompressorType compressorKind,

        @DecimalMin("0")
        @DecimalMax(value = "1", inclusive = false)
        @Schema(description = "Share of the work that the compressor's shell gives off, 0 to below 1. Default: 0.")
        Double heatLossFraction,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(
                description =
                        "Shaft power over electrical power, above 0 to 1. Of a hermetic compressor the loss ends up in the "
                                + "refrigerant.")
        Double motorEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Suction volume flow over displacement, above 0 to 1.")
        Double volumetricEfficiency,

        @Schema(ref = "Power", description = "Size: heat taken up in the evaporator. At most one size is given.")
        Quantity refrigeratingCapacity,

        @Schema(ref = "MassFlow", description = "Size: refrigerant flow. At most one size is given.")
        Quantity massFlow,

        @Schema(ref = "VolumeFlow", description = "Size: volume swept by the compressor. At most one size is given.")
        Quantity displacement,

        @Schema(ref = "PressureDifference") Quantity evaporatorPressureDrop,

        @Schema(ref = "PressureDifference") Quantity suctionLinePressureDrop,

        @Schema(ref = "PressureDifference") Quantity dischargeLinePressureDrop,

        @Schema(ref = "PressureDifference") Quantity condenserPressureDrop,

        @Schema(ref = "PressureDifference", description = "Negative where a falling line gains more than it loses.")
        Quantity liquidLinePressureDrop,

        @Schema(
                ref = "SpecificEnergy",
                description =
                        "Heat that the vapor takes up in the suction line, which cools nothing useful. At most one of this, "
                                + "suctionLineTemperatureRise and compressorInletTemperature is given.")
        Quantity suctionLineHeatGain,

        @Schema(
                ref = "TemperatureDifference",
                description = "By which the vapor arrives warmer than it left the evaporator.")
        Quantity suctionLineTemperatureRise,

        @Schema(ref = "Temperature", description = "Return gas temperature.")
        Quantity compressorInletTemperature,

        @Schema(ref = "SpecificEnergy", description = "Heat given off between compressor and condenser.")
        Quantity dischargeLineHeatLoss,

        @Schema(
                ref = "SpecificEnergy",
                description = "Heat taken up between condenser and valve, negative if given off.")
        Quantity liquidLineHeatGain,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
