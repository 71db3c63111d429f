package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A refrigerant of the catalogue. */
@Schema(name = "Refrigerant", description = "A refrigerant of the catalogue. What is not known is absent.")
public record RefrigerantItem(
        @Schema(required = true, description = "As ASHRAE 34 writes it.", examples = "R-134a")
        String designation,

        @Schema(required = true) String name,

        @Schema(description = "Further names that requests may use.")
        List<String> aliases,

        @Schema(required = true) RefrigerantKind kind,

        String formula,

        @Schema(description = "CAS registry number.") String casNumber,

        @Schema(required = true, ref = "MolarMass") Quantity molarMass,

        @Schema(required = true) CriticalState criticalPoint,

        @Schema(
                ref = "Temperature",
                description = "Saturation temperature at 101.325 kPa; of a blend the bubble point.")
        Quantity normalBoilingPoint,

        @Schema(ref = "Temperature", description = "Of a blend: dew point at 101.325 kPa.")
        Quantity normalDewPoint,

        @Schema(
                ref = "TemperatureDifference",
                description = "Of a blend: dew less bubble point at 101.325 kPa, the glide.")
        Quantity normalGlide,

        @Schema(description = "Of a blend: the highest temperature at which liquid and vapor coexist.")
        BoundaryPoint cricondentherm,

        @Schema(description = "Of a blend: the highest pressure at which liquid and vapor coexist.")
        BoundaryPoint cricondenbar,

        @Schema(required = true) ModelRange range,

        @Schema(required = true, description = "Default datum of enthalpy and entropy.")
        ReferencePoint referenceState,

        SafetyGroup safetyGroup,

        @Schema(description = "Where the safety group stands, and whether it was remembered.")
        String safetyGroupSource,

        List<WarmingPotential> globalWarmingPotentials,

        @Schema(description = "Of a blend: bases on which a component has no value, so that the blend has none.")
        List<MissingPotential> missingWarmingPotentials,

        List<OzonePotential> ozoneDepletionPotentials,

        @Schema(
                description =
                        "Refrigerant concentration limit of ASHRAE 34 for the air of an occupied room; single compounds only, "
                                + "where it is on file.")
        ConcentrationLimit refrigerantConcentrationLimit,

        @Schema(
                description =
                        "Lower flammability limit in air; single compounds only, where it is on file. Absent does not mean "
                                + "that there is none.")
        ConcentrationLimit lowerFlammabilityLimit,

        @Schema(description = "Composition of a blend and what its model rests on.")
        BlendModel blend,

        @Schema(required = true) EquationOfState equationOfState,

        @Schema(required = true) TransportSources transportProperties) {}
