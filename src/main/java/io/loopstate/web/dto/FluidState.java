package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * One thermodynamic state. What does not apply is absent: heat capacities and speed of sound inside the dome, the vapor
 * quality outside of it.
 */
@Schema(
        name = "State",
        description =
                "One thermodynamic state. What does not apply is absent: heat capacities and speed of sound for a mixture "
                        + "of liquid and vapor, the vapor quality outside the dome. Enthalpy, entropy and internal energy are counted "
                        + "from the reference state named in the basis of the reply.")
public record FluidState(
        @Schema(description = "Where in the loop this state is; only among the points of a cycle.")
        PlaceInLoop name,

        @Schema(required = true) FluidPhase phase,

        @Schema(required = true, ref = "Temperature") Quantity temperature,

        @Schema(required = true, ref = "Pressure") Quantity pressure,

        @Schema(required = true, ref = "Density") Quantity density,

        @Schema(required = true, ref = "SpecificVolume") Quantity specificVolume,

        @Schema(required = true, ref = "SpecificEnergy") Quantity specificEnthalpy,

        @Schema(required = true, ref = "SpecificEntropy") Quantity specificEntropy,

        @Schema(required = true, ref = "SpecificEnergy") Quantity specificInternalEnergy,

        @Schema(
                description = "Mass of vapor per mass of mixture, inside the dome and on its edge.",
                minimum = "0",
                maximum = "1")
        Double vaporQuality,

        @Schema(ref = "TemperatureDifference", description = "Above the dew point at this pressure; of vapor only.")
        Quantity superheat,

        @Schema(ref = "TemperatureDifference", description = "Below the bubble point at this pressure; of liquid only.")
        Quantity subcooling,

        @Schema(ref = "SpecificEntropy") Quantity isobaricHeatCapacity,

        @Schema(ref = "SpecificEntropy") Quantity isochoricHeatCapacity,

        @Schema(ref = "Speed") Quantity speedOfSound,

        @Schema(ref = "JouleThomson", description = "Change of temperature with pressure at constant enthalpy.")
        Quantity jouleThomsonCoefficient,

        @Schema(description = "p v / (R T), with the gas constant of the equation of state.")
        Double compressibilityFactor,

        @Schema(description = "-(v/p) (dp/dv) at constant entropy.")
        Double isentropicExponent,

        @Schema(ref = "ThermalExpansion", description = "(1/v) (dv/dT) at constant pressure.")
        Quantity thermalExpansion,

        @Schema(ref = "Compressibility", description = "-(1/v) (dv/dp) at constant temperature.")
        Quantity isothermalCompressibility,

        @Schema(
                ref = "DynamicViscosity",
                description =
                        "Of one phase, where the refrigerant has a published correlation, which no blend has; in replies of "
                                + "/v1/properties/state and /v1/properties/saturation, as are the two that follow.")
        Quantity viscosity,

        @Schema(ref = "ThermalConductivity", description = "Of one phase.")
        Quantity thermalConductivity,

        @Schema(ref = "SurfaceTension", description = "Between liquid and vapor, of saturated states.")
        Quantity surfaceTension) {}
