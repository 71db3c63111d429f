package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A component of a blend.
 *
 * @param refrigerant its designation
 * @param massFraction kg/kg
 * @param moleFraction mol/mol
 */
@Schema(description = "A component of a blend.")
public record BlendComponent(
        @Schema(required = true, examples = "R-32") String refrigerant,

        @Schema(required = true, description = "Mass of the component per mass of the blend.")
        double massFraction,

        @Schema(required = true, description = "Amount of the component per amount of the blend.")
        double moleFraction) {}
