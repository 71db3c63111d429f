package io.loopstate.web.batch;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.loopstate.web.problem.Problem;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What became of all rows.
 *
 * @param count of rows that were answered
 * @param succeeded those with status 200
 * @param refused all others
 * @param statuses by status, ascending
 * @param problem why rows were left unanswered; {@code null} where none were
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
@Schema(description = "What became of all rows.")
public record BatchSummary(
        @Schema(required = true, description = "Rows that were answered.")
        long count,

        @Schema(required = true, description = "Those with status 200.")
        long succeeded,

        @Schema(required = true, description = "All others.")
        long refused,

        @Schema(required = true, description = "Rows by status.")
        List<StatusCount> statuses,

        @Schema(description = "Why rows at the end were not answered; absent where all were.")
        Problem problem) {

    /** Copies the list. */
    public BatchSummary {
        statuses = List.copyOf(statuses);
    }
}
