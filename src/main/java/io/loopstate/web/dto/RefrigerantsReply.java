package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The refrigerants that a query selects. */
@Schema(description = "The refrigerants that the query selects, in the order of the catalogue.")
public record RefrigerantsReply(
        @Schema(required = true) int count,

        @Schema(required = true) @Rows List<RefrigerantItem> refrigerants) {}
