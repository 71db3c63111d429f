package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What a reply rests on.
 *
 * @param engineVersion version of the engine
 * @param refrigerant designation, as the catalogue writes it
 * @param equationOfState equation and sources
 * @param blend composition and pairs of a blend, absent for any other refrigerant
 * @param transportProperties correlations, where the reply holds transport properties
 * @param referenceState datum of enthalpy and entropy
 * @param atmosphere from which gauge readings were counted
 * @param unitSystem set of units of the reply
 */
@Schema(description = "What the reply rests on.")
public record Basis(
        @Schema(required = true, description = "Version of the engine: same version and same request, same reply.")
        String engineVersion,

        @Schema(
                required = true,
                description =
                        "Designation, as the catalogue writes it; brine for a liquid whose properties were given.",
                examples = "R-134a")
        String refrigerant,

        @Schema(required = true) EquationOfState equationOfState,

        @Schema(description = "Composition of a blend and what its model rests on.")
        BlendModel blend,

        @Schema(
                description =
                        "Where the reply can hold transport properties; absent for blends, for which none are computed.")
        TransportSources transportProperties,

        @Schema(required = true) ReferencePoint referenceState,

        @Schema(required = true) SurroundingAir atmosphere,

        @Schema(required = true) UnitSet unitSystem) {}
