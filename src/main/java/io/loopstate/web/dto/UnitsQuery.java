package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Which units to list. */
public record UnitsQuery(
        @Schema(description = "One kind of quantity, such as massFlow; all if absent.")
        String kind) {}
