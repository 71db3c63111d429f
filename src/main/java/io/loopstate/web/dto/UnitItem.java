package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A unit of measurement. */
@Schema(name = "Unit", description = "A unit of measurement.")
public record UnitItem(
        @Schema(required = true, description = "Canonical ASCII name.", examples = "psig")
        String unit,

        @Schema(required = true) String words,

        @Schema(required = true, description = "As printed.", examples = "psi(g)")
        String symbol,

        @Schema(description = "What a pressure counts from: absolute, gauge, vacuum or difference.")
        String reference,

        @Schema(description = "Code of the Unified Code for Units of Measure, which says nothing of gauge or absolute.")
        String ucum,

        @Schema(description = "IRI in the QUDT vocabulary, which says nothing of gauge or absolute.")
        String qudt,

        @Schema(required = true, description = "Size of one unit in SI.")
        double factor,

        @Schema(description = "SI value at the number zero, of the temperature scales.")
        Double offset,

        @Schema(description = "Further spellings that requests may use.")
        List<String> spellings,

        @Schema(description = "Where the definition comes from, or what else must be known.")
        String note) {}
