package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Published values that are not compared.
 *
 * @param source short name
 * @param citation in full
 * @param place in the source
 * @param rows their names
 * @param values how many numbers they hold
 * @param reason why they are not compared
 */
@Schema(description = "Published values that are on file and not compared.")
public record VerificationGap(
        @Schema(required = true, examples = "L2003") String source,
        @Schema(required = true) String citation,

        @Schema(required = true, description = "Place in the source.")
        String place,

        @Schema(required = true, description = "Names of the rows.")
        List<String> rows,

        @Schema(required = true, description = "How many numbers they hold.")
        int values,

        @Schema(required = true, description = "Why they are not compared.")
        String reason) {}
