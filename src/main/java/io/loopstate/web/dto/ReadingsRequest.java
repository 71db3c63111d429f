package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Readings of a technician on a running single-stage unit. */
@Schema(
        description =
                "Readings of a technician on a running single-stage unit. Three are required; each of the others opens a "
                        + "further result.")
public record ReadingsRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @NotNull @Schema(ref = "Pressure", description = "At the compressor.")
        Quantity suctionPressure,

        @NotNull @Schema(ref = "Temperature", description = "At the compressor.")
        Quantity suctionLineTemperature,

        @NotNull @Schema(ref = "Pressure", description = "At the compressor.")
        Quantity dischargePressure,

        @Schema(ref = "Temperature", description = "At the compressor, about 15 cm behind the valve.")
        Quantity dischargeLineTemperature,

        @Schema(
                ref = "Pressure",
                description =
                        "Where the liquid line temperature is taken. Default: the discharge pressure, with a note.")
        Quantity liquidLinePressure,

        @Schema(ref = "Temperature", description = "Before the valve.")
        Quantity liquidLineTemperature,

        @Schema(ref = "Temperature", description = "At the coil, where the bulb of the valve sits.")
        Quantity evaporatorOutletTemperature,

        @Schema(ref = "Temperature", description = "Air around the outdoor unit.")
        Quantity outdoorAirTemperature,

        @Schema(description = "Air of the condenser or gas cooler.")
        AirRequest condenserAir,

        @Schema(description = "Air of the evaporator.") AirRequest evaporatorAir,

        @Schema(description = "Taken as hermetic unless given.")
        CompressorType compressorKind,

        @Valid ElectricityRequest electricity,

        @Schema(ref = "VolumeFlow", description = "Volume swept by the compressor.")
        Quantity displacement,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Suction volume flow over displacement, above 0 to 1.")
        Double volumetricEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(description = "Shaft power over electrical power, above 0 to 1.")
        Double motorEfficiency,

        @DecimalMin("0")
        @DecimalMax(value = "1", inclusive = false)
        @Schema(description = "Share of the work that the compressor's shell gives off, 0 to below 1. Default: 0.")
        Double heatLossFraction,

        @Schema(
                ref = "Length",
                description =
                        "Height of the valve above the place where the liquid line pressure is read, negative if below.")
        Quantity liquidLift,

        @Schema(ref = "PressureDifference", description = "Friction between the same places.")
        Quantity liquidLinePressureDrop,

        @Schema(description = "Limits for the warnings.") LimitsRequest limits,

        @JsonUnwrapped Options options) {}
