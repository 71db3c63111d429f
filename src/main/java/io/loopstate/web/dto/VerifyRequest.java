package io.loopstate.web.dto;

import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Requests with the values that are expected of their replies.
 *
 * @param name of the file, for reports
 * @param cases the requests
 */
@Schema(description = "Requests with the values that are expected of their replies: a test, or the key of a worksheet.")
public record VerifyRequest(
        @Schema(
                description = "Name of the file in reports, at most 200 characters. Default: verify.",
                examples = "Harbor Trades College: superheat worksheet")
        String name,

        @NotNull @Schema(description = "1 to 1000 cases.", minItems = 1, maxItems = 1000)
        List<VerifyCase> cases) {}
