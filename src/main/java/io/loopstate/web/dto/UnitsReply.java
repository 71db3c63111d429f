package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Kinds of quantity and their units. */
@Schema(description = "Kinds of quantity and their units.")
public record UnitsReply(
        @Schema(required = true) @Rows(each = "units") List<UnitKind> kinds) {}
