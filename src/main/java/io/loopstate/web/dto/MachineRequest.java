package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A compressor by its displacement. */
@Schema(
        name = "Compressor",
        description =
                "A compressor by its displacement. Reciprocating: bore, stroke and speed, or displacementPerRevolution and "
                        + "speed, or displacement; and clearance or volumetricEfficiency. Rotary, scroll, screw: "
                        + "displacementPerRevolution and speed, or displacement. Centrifugal: inletVolumeFlow and tipSpeed, or "
                        + "impellerDiameter and speed, or a head-flow curve. And isentropicEfficiency, or polytropicIndex of a cooled cylinder.")
public record MachineRequest(
        @NotNull CompressorDesign design,

        @NotNull CompressorHousing housing,

        @Schema(
                description =
                        "Default: suctionGas of a hermetic or semi-hermetic compressor, surroundings of an open one.")
        MotorHeatSink motorCooling,

        @Schema(
                ref = "Frequency",
                description = "Of the compressor; needed where the displacement is given per revolution.")
        Quantity speed,

        @Schema(ref = "Length", description = "Reciprocating: with stroke and speed the displacement.")
        Quantity bore,

        @Schema(ref = "Length") Quantity stroke,

        @Min(1) @Max(64) @Schema(description = "Default: 1.")
        Integer cylinders,

        @Schema(description = "Whether both faces of the pistons compress.")
        Boolean doubleActing,

        @Schema(ref = "Length", description = "Of a double-acting piston; its area is lost on one face.")
        Quantity rodDiameter,

        @Schema(ref = "Volume", description = "Instead of bore and stroke; of a scroll, rotary or screw with speed.")
        Quantity displacementPerRevolution,

        @Schema(ref = "VolumeFlow", description = "Volume swept, instead of any of the above.")
        Quantity displacement,

        @DecimalMin(value = "0", inclusive = true)
        @DecimalMax(value = "1", inclusive = false)
        @Schema(
                description =
                        "Reciprocating: clearance over swept volume, 0 to below 1; the real vapor in it re-expands.")
        Double clearance,

        @Schema(ref = "PressureDifference", description = "Reciprocating.")
        Quantity suctionValvePressureDrop,

        @Schema(ref = "PressureDifference", description = "Reciprocating.")
        Quantity dischargeValvePressureDrop,

        @DecimalMin(value = "0", inclusive = true)
        @DecimalMax(value = "1", inclusive = false)
        @Schema(description = "Reciprocating: share of the vapor drawn in that leaks back, 0 to below 1.")
        Double leakageFraction,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(
                description =
                        "Vapor drawn in over displacement, at the port of cylinder or rotors, above 0 to 1: instead of clearance; of a scroll, rotary or screw 1 unless given.")
        Double volumetricEfficiency,

        @DecimalMin(value = "1", inclusive = true)
        @DecimalMax(value = "10", inclusive = true)
        @Schema(
                description =
                        "Rotary, scroll, screw: volume at the start over that at the end of compression inside, 1 to 10; a ratio of volumes, not of pressures. Without it a valve opens when the pressure is reached.")
        Double builtInVolumeRatio,

        @Schema(ref = "Speed", description = "Centrifugal: of the impeller; or its diameter and speed.")
        Quantity tipSpeed,

        @Schema(ref = "Length", description = "Centrifugal.")
        Quantity impellerDiameter,

        @Min(1) @Max(20) @Schema(description = "Centrifugal: impellers in series. Default: 1.")
        Integer stages,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(
                description =
                        "Centrifugal: isentropic head of a stage over the square of the tip speed, above 0 to 1; without it the reply says which one is needed.")
        Double headCoefficient,

        @Schema(
                description =
                        "Centrifugal: points of a head-flow curve, three or more: V / (u D^2) of a stage, rising. With headCoefficients, "
                                + "efficiencies, impellerDiameter and speed; the flow is then sought.")
        List<Double> flowCoefficients,

        @Schema(
                description =
                        "Of the same points: isentropic head of a stage over u^2; falling from the highest on, where it surges.")
        List<Double> headCoefficients,

        @Schema(description = "Of the same points: isentropic, above 0 to 1.")
        List<Double> efficiencies,

        @Schema(ref = "VolumeFlow", description = "Centrifugal: vapor drawn in.")
        Quantity inletVolumeFlow,

        @Schema(ref = "VolumeFlow", description = "Centrifugal: below it the machine surges.")
        Quantity minimumVolumeFlow,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(description = "Of the compression inside, above 0 to 1; valve drops, motor and friction come on top.")
        Double isentropicEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "10", inclusive = true)
        @Schema(
                description =
                        "Reciprocating: n of compression and re-expansion in a cooled cylinder, instead of isentropicEfficiency.")
        Double polytropicIndex,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(
                description =
                        "Work on the vapor over work at the shaft, above 0 to 1; friction ends up in the vapor. Default: 1.")
        Double mechanicalEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(
                description =
                        "Power at the motor shaft over electrical power, above 0 to 1. Default: 1, which a note says.")
        Double motorEfficiency,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax(value = "1", inclusive = true)
        @Schema(description = "Open: of belt or coupling, above 0 to 1. Default: 1.")
        Double driveEfficiency,

        @DecimalMin(value = "0", inclusive = true)
        @DecimalMax(value = "1", inclusive = false)
        @Schema(
                description =
                        "Share of the power that enters the housing given off by its shell, 0 to below 1. Default: 0.")
        Double heatLossFraction) {}
