package io.loopstate.web.batch;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.web.dto.Rows;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A table over the values of the varied inputs.
 *
 * @param rows one for each point: inputs, values of the reply, status, and where it was refused the error
 * @param summary of all
 */
@Schema(description = "A table over the values of the varied inputs.")
public record SweepReply(
        @Schema(
                required = true,
                description =
                        "One row for each point, in the order of the inputs: the varied inputs by name, the values picked by name, "
                                + "warnings (codes), status (what the point would have had alone), and where it was refused "
                                + "error, the reasons in words.",
                implementation = Map[].class)
        @Rows
        List<ObjectNode> rows,

        @Schema(required = true) BatchSummary summary) {

    /** Copies the list. */
    public SweepReply {
        rows = List.copyOf(rows);
    }
}
