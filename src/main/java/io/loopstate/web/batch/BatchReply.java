package io.loopstate.web.batch;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The answers to all rows of an array, for the contract; they are written piece by piece.
 *
 * @param items in the order of the rows
 * @param summary of all
 */
@Schema(description = "The answers in the order of the rows, then what became of all.")
public record BatchReply(
        @Schema(required = true) List<BatchAnswer> items,
        @Schema(required = true) BatchSummary summary) {

    /** Copies the list. */
    public BatchReply {
        items = List.copyOf(items);
    }
}
