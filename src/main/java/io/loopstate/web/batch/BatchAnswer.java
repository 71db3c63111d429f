package io.loopstate.web.batch;

import io.loopstate.web.problem.Problem;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The answer to one row, for the contract; answers are written piece by piece.
 *
 * @param index place of the row, from 0
 * @param id the client's own name of the row
 * @param status the HTTP status that the row would have had on its own
 * @param reply of the calculation
 * @param problem where it was refused
 */
@Schema(description = "The answer to one row, with its reply or its problem.")
public record BatchAnswer(
        @Schema(required = true, description = "Place of the row, from 0; empty lines do not count.")
        long index,

        @Schema(description = "As the row gave it.") String id,

        @Schema(
                required = true,
                description = "The HTTP status that the row would have had on its own.",
                examples = "200")
        int status,

        @Schema(description = "What the POST of the calculation replies; only with status 200.")
        Map<String, Object> reply,

        @Schema(description = "Why the row was refused; pointers count from the row.")
        Problem problem) {}
