package io.loopstate.web.batch;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * How many rows had one status.
 *
 * @param status the HTTP status that the rows would have had on their own
 * @param count of rows
 */
@Schema(description = "How many rows had one status.")
public record StatusCount(
        @Schema(required = true, description = "The HTTP status that the rows would have had on their own.")
        int status,

        @Schema(required = true) long count) {}
