package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What a reply about air rests on. */
@Schema(description = "What a reply about moist air rests on.")
public record AirBasis(
        @Schema(required = true, description = "Version of the engine: same version and same request, same reply.")
        String engineVersion,

        @Schema(required = true, description = "The formulation of moist air.")
        String formulation,

        @Schema(required = true) List<Source> sources,

        @Schema(required = true) AirEnthalpyDatum enthalpyDatum,

        @Schema(required = true) SurroundingAir atmosphere,

        @Schema(required = true) UnitSet unitSystem) {}
