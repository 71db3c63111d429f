package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A kind of quantity and its units. */
@Schema(description = "A kind of quantity and its units. Units convert within a kind and never across kinds.")
public record UnitKind(
        @Schema(required = true, description = "Name in the parameter units.", examples = "massFlow")
        String kind,

        @Schema(required = true) String words,

        @Schema(required = true, description = "The coherent SI unit, as a UCUM code.")
        String siUnit,

        @Schema(required = true, description = "Unit of replies in SI.")
        String replySi,

        @Schema(required = true, description = "Unit of replies in IP.")
        String replyIp,

        @Schema(required = true) List<UnitItem> units) {}
