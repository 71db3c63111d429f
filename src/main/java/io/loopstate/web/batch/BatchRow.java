package io.loopstate.web.batch;

import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * One row of a batch, for the contract; rows are read as trees.
 *
 * @param id the client's own name of the row
 * @param operation the calculation
 * @param request its request
 */
@Schema(description = "One calculation of a batch.")
public record BatchRow(
        @Schema(description = "A name of your own, given back in the answer; at most 200 characters.")
        String id,

        @Schema(
                description =
                        "The calculation by its path below /v1; may stand in the query instead, for all rows without one.",
                examples = "cycle-points/design")
        String operation,

        @Schema(required = true, description = "The body that the POST of this calculation takes.")
        Map<String, Object> request) {}
